package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmloom.draw.study.StartCharts;
import org.ohmloom.model.ElementId;
import org.ohmloom.review.StudyPart;
import org.ohmloom.solve.run.RelayDropOut;
import org.ohmloom.solve.run.StartUp;
import org.ohmloom.solve.run.StartUps;
import org.ohmloom.solve.run.StarterTrace;
import org.ohmloom.solve.run.SupplySag;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Words;

/** Loads and control units starting, over time, and what the supply of everything else does meanwhile. */
public final class StartStudy implements Study<StartStudy.Row> {
    private static final Words WORDS = Words.of("studies");

    private static final int MOST_SAGS = 6;

    /**
     * A run.
     *
     * @param run   the run
     * @param name  name of what starts
     * @param state name of the state
     */
    record Row(StartUp run, String name, String state) {

        Optional<SupplySag> worst() {
            return run.sags().stream().findFirst();
        }

        /** Lowest voltage as a share of what the supply hit hardest needs, or of what it had before. */
        double margin() {
            return worst().map(sag -> sag.lowestVolts() / sag.minimumVolts().orElse(sag.beforeVolts()))
                    .orElse(Double.NEGATIVE_INFINITY);
        }

        CellText lowest() {
            return worst().map(sag -> {
                        CellText text = CellText.of(sag.lowestVolts());
                        return sag.isTooLow()
                                ? text.in(Tone.ERROR).saying(WORDS.get("start.less-than-it-works"))
                                : text;
                    })
                    .orElse(CellText.EMPTY);
        }

        double peakAmps() {
            return run.starters().stream().mapToDouble(StarterTrace::peakAmps).sum();
        }

        CellText outcome() {
            return switch (run.outcome()) {
                case SETTLED -> CellText.of(WORDS.get("start.runs"));
                case CUT_OFF -> CellText.of(WORDS.get("start.still-settling"))
                        .in(Tone.WARNING)
                        .saying(Words.said(run.told()));
                case STALLED -> CellText.of(WORDS.get("start.does-not-turn"))
                        .in(Tone.ERROR)
                        .saying(Words.said(run.told()));
                case NO_OPERATING_POINT -> CellText.of(WORDS.get("start.collapses"))
                        .in(Tone.ERROR)
                        .saying(Words.said(run.told()));
            };
        }
    }

    @Override
    public String key() {
        return "start-up";
    }

    @Override
    public String title() {
        return WORDS.get("start.start-up");
    }

    @Override
    public String about() {
        return WORDS.get("start.what-happens-while-a");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(WORDS.term("start.starts"), WORDS.get("start.starts.about"), 20, Row::name),
                Column.text(WORDS.term("start.state"), WORDS.get("start.state.about"), 12, Row::state),
                Column.number(WORDS.term("start.lowest"), "V", WORDS.get("start.lowest.about"), Row::lowest),
                Column.text(WORDS.term("start.at"), WORDS.get("start.at.about"), 7, row -> row.worst()
                        .map(sag -> sag.id().value())
                        .orElse("")),
                Column.number(
                        WORDS.term("start.works-from"), "V", WORDS.get("start.works-from.about"), row -> row.worst()
                                .map(sag -> CellText.of(sag.minimumVolts()))
                                .orElse(CellText.EMPTY)),
                Column.number(WORDS.term("start.below-for"), "s", WORDS.get("start.below-for.about"), row -> row.worst()
                        .filter(sag -> sag.minimumVolts().isPresent())
                        .map(sag -> CellText.of(sag.belowSeconds()))
                        .orElse(CellText.EMPTY)),
                Column.number(
                        WORDS.term("start.peak"),
                        "A",
                        WORDS.get("start.peak.about"),
                        row -> CellText.of(row.peakAmps())),
                new Column<>(
                        WORDS.term("start.then"),
                        "",
                        WORDS.get("start.then.about"),
                        14,
                        Row::outcome,
                        Optional.empty()));
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.STARTS);
    }

    @Override
    public List<Row> rows(Readout readout) {
        return starts(readout).runs().stream()
                .filter(run ->
                        readout.state().isEmpty() || readout.state().get().equals(run.state()))
                .map(run -> new Row(run, name(readout, run), readout.stateName(run.state())))
                .sorted(Comparator.comparing((Row row) ->
                                row.worst().filter(SupplySag::isTooLow).isEmpty())
                        .thenComparingDouble(Row::margin))
                .toList();
    }

    private static StartUps starts(Readout readout) {
        return readout.analysis().map(results -> results.evidence().startUps()).orElse(StartUps.NONE);
    }

    private static String name(Readout readout, StartUp run) {
        return run.starter()
                .map(id -> id + " "
                        + readout.harness()
                                .components()
                                .find(id)
                                .map(found -> found.name())
                                .orElse(""))
                .orElse(WORDS.get("start.all-at-once", run.starters().size()));
    }

    @Override
    public ElementId id(Row row) {
        return row.run().starter().map(id -> (ElementId) id).orElse(row.run().state());
    }

    @Override
    public String nothing(Readout readout) {
        String skipped = starts(readout).skipped().stream()
                .map(each -> Words.said(each.reason()))
                .distinct()
                .limit(2)
                .collect(Collectors.joining(" "));
        return WORDS.get("start.no-start-moves-any", skipped.isEmpty() ? "" : "\n" + skipped);
    }

    @Override
    public Optional<Picture> picture(Readout readout, Row row, Optional<String> selected) {
        return StartCharts.of(readout.harness(), row.run())
                .map(chart -> new Picture(
                        WORDS.get(
                                "start.voltage-and-current-over",
                                chart.title(),
                                Formats.seconds(row.run().durationSeconds())),
                        chart::scene));
    }

    @Override
    public List<String> steps(Readout readout, Row row) {
        List<String> steps = new ArrayList<>();
        steps.add(Words.said(row.run().told()));
        for (StarterTrace starter : row.run().starters()) {
            steps.add(WORDS.get(
                    "start.peak-then-at-least",
                    starter.id(),
                    starter.method(),
                    Formats.amps(starter.peakAmps()),
                    Formats.amps(starter.endAmps()),
                    Formats.volts(starter.lowestVolts())));
        }
        row.run().sags().stream().limit(MOST_SAGS).forEach(sag -> steps.add(sag(sag)));
        for (RelayDropOut drop : row.run().dropOuts()) {
            steps.add(WORDS.get(
                    "start.relay-may-drop-out",
                    drop.relay(),
                    Formats.volts(drop.lowestVolts()),
                    Formats.volts(drop.dropOutVolts())));
        }
        starts(readout).skipped().stream()
                .filter(each -> each.state().equals(row.run().state()))
                .forEach(each ->
                        steps.add(each.starters().stream().map(id -> id.value()).collect(Collectors.joining(", "))
                                + ": " + Words.said(each.reason())));
        starts(readout)
                .assumptions()
                .forEach(each ->
                        steps.add(each.element() + ": " + Words.said(each.told()) + " (" + each.source() + ")"));
        return steps;
    }

    private static String sag(SupplySag sag) {
        String text = WORDS.get(
                "start.falls-from-to", sag.id(), Formats.volts(sag.beforeVolts()), Formats.volts(sag.lowestVolts()));
        return sag.minimumVolts().isEmpty()
                ? text + "."
                : WORDS.get(
                        "start.it-works-down-to",
                        text,
                        Formats.volts(sag.minimumVolts().getAsDouble()),
                        sag.belowSeconds() > 0
                                ? WORDS.get("start.below-that-for", Formats.seconds(sag.belowSeconds()))
                                : ".");
    }
}
