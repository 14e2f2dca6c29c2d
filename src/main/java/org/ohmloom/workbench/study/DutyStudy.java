package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ohmloom.analysis.OutputDuty;
import org.ohmloom.draw.chart.Stack;
import org.ohmloom.draw.study.DutyCharts;
import org.ohmloom.draw.study.DutyClocks;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Ripple;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.words.Term;
import org.ohmloom.workbench.words.Words;

/** Outputs run at a duty: what flows while on, what heats and what the battery gives, in feed, load and freewheel path. */
public final class DutyStudy implements Study<DutyStudy.Row> {
    private static final Words WORDS = Words.of("studies");

    /**
     * A load behind an output in a state.
     *
     * @param state    the state
     * @param solution its solution
     * @param output   the output
     * @param load     the load behind it
     */
    public record Row(OperatingState state, Solution solution, OutputDuty output, OutputDuty.BehindOutput load) {

        CellText ripple(Function<Ripple, Double> value) {
            return load.ripple().map(value).map(CellText::of).orElse(CellText.EMPTY);
        }

        CellText freewheel(Function<BranchFlow, Double> value) {
            return load.freewheel().map(value).map(CellText::of).orElse(CellText.EMPTY);
        }
    }

    @Override
    public String key() {
        return "duty";
    }

    @Override
    public String title() {
        return WORDS.get("duty.duty");
    }

    @Override
    public String about() {
        return WORDS.get("duty.outputs-run-at-a");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(WORDS.term("duty.output"), WORDS.get("duty.output.about"), 9, row -> row.output()
                        .output()
                        .value()),
                Column.text(WORDS.term("duty.load"), WORDS.get("duty.load.about"), 7, row -> row.load()
                        .load()
                        .value()),
                Column.text(WORDS.term("duty.state"), WORDS.get("duty.state.about"), 12, row -> row.state()
                        .name()),
                Column.number(
                        WORDS.term("duty.duty"),
                        "%",
                        WORDS.get("duty.duty.about"),
                        row -> CellText.of(100 * row.output().pulse().dutyFraction())),
                number(WORDS.term("duty.feed-on"), WORDS.get("duty.feed-on.about"), row -> row.output()
                        .feed()
                        .onAmps()),
                number(WORDS.term("duty.feed-rms"), WORDS.get("duty.feed-rms.about"), row -> row.output()
                        .feed()
                        .rmsAmps()),
                number(WORDS.term("duty.feed-mean"), WORDS.get("duty.feed-mean.about"), row -> row.output()
                        .feed()
                        .amps()),
                number(WORDS.term("duty.load-on"), WORDS.get("duty.load-on.about"), row -> row.load()
                        .flow()
                        .onAmps()),
                number(WORDS.term("duty.load-rms"), WORDS.get("duty.load-rms.about"), row -> row.load()
                        .flow()
                        .rmsAmps()),
                number(WORDS.term("duty.load-mean"), WORDS.get("duty.load-mean.about"), row -> row.load()
                        .flow()
                        .amps()),
                Column.number(
                        WORDS.term("duty.freewheel-rms"),
                        "A",
                        WORDS.get("duty.freewheel-rms.about"),
                        row -> row.freewheel(BranchFlow::rmsAmps)),
                Column.number(
                        WORDS.term("duty.ripple-from"),
                        "A",
                        WORDS.get("duty.ripple-from.about"),
                        row -> row.ripple(Ripple::valleyAmps)),
                Column.number(
                        WORDS.term("duty.to"), "A", WORDS.get("duty.to.about"), row -> row.ripple(Ripple::peakAmps)));
    }

    private static Column<Row> number(Term title, String tip, Function<Row, Double> value) {
        return Column.number(title, "A", tip, row -> CellText.of(Math.abs(value.apply(row))));
    }

    @Override
    public List<Row> rows(Readout readout) {
        List<Row> rows = new ArrayList<>();
        for (OperatingState state : readout.harness().states().all()) {
            if (readout.state().isPresent() && !readout.state().get().equals(state.id())) {
                continue;
            }
            readout.analysis()
                    .flatMap(results -> results.solution(state.id()))
                    .ifPresent(solution -> OutputDuty.of(solution).forEach(output -> output.loads()
                            .forEach(load -> rows.add(new Row(state, solution, output, load)))));
        }
        return rows;
    }

    @Override
    public ElementId id(Row row) {
        return row.load().load();
    }

    @Override
    public String nothing(Readout readout) {
        if (readout.harness().states().all().isEmpty()) {
            return WORDS.get("duty.add-an-operating-state");
        }
        return WORDS.get("duty.no-output-runs-at");
    }

    @Override
    public Optional<Picture> picture(Readout readout, Row row, Optional<String> selected) {
        return readout.analysis()
                .flatMap(results -> DutyCharts.of(results, row.state(), row.output()))
                .map(chart -> new Picture(
                        WORDS.get("duty.on-state-rms-and", chart.title()),
                        (fonts, widthMm, heightMm) -> Stack.of(Stream.concat(
                                        Stream.of(chart.scene(fonts, widthMm)),
                                        DutyClocks.chart(
                                                row.state(),
                                                row.solution(),
                                                row.output().output())
                                                .map(clock -> clock.scene(fonts, widthMm))
                                                .stream())
                                .toList())));
    }

    @Override
    public List<String> steps(Readout readout, Row row) {
        List<String> steps = new ArrayList<>();
        BranchFlow feed = row.output().feed();
        steps.add(WORDS.get(
                "duty.in-on-for-of",
                row.output().output(),
                row.state().name(),
                Formats.percent(row.output().pulse().dutyFraction()),
                Formats.hertz(row.output().pulse().frequencyHertz()),
                row.output().pulse().clock(),
                Formats.percent(row.output().pulse().phaseFraction())));
        steps.addAll(
                Words.said(DutyClocks.words(row.solution().duty(), row.output().output())));
        steps.add(WORDS.get("duty.feed-drop-and-devices", currents(feed)));
        steps.add(
                WORDS.get("duty.load-2", row.load().load(), currents(row.load().flow())));
        row.load().freewheel().ifPresent(flow -> steps.add(WORDS.get("duty.freewheel-path", currents(flow))));
        row.load().ripple().ifPresent(ripple -> {
            steps.add(WORDS.get(
                    "duty.ripple-of-its-current",
                    Formats.amps(ripple.valleyAmps()),
                    Formats.amps(ripple.peakAmps()),
                    ripple.isContinuous() ? WORDS.get("duty.it-never-dies-away") : WORDS.get("duty.it-dies-away-in")));
            if (!ripple.hasFreewheel()) {
                steps.add(WORDS.get(
                        "duty.its-current-finds-no", Formats.quantity(ripple.brokenJoules(), Dimension.ENERGY)));
            }
        });
        row.solution().duty().clamps().values().stream()
                .filter(clamp -> clamp.output().equals(row.output().output()))
                .forEach(clamp -> steps.add(WORDS.get(
                        "duty.its-clamp-swallows-a",
                        Formats.quantity(clamp.pulseJoules(), Dimension.ENERGY),
                        Formats.watts(clamp.meanWatts()))));
        if (row.solution().duty().sampled()) {
            steps.add(WORDS.get(
                    "duty.rms-currents-are-known",
                    Formats.percent(row.solution().duty().samplingErrorRatio())));
        }
        return steps;
    }

    private static String currents(BranchFlow flow) {
        return WORDS.get(
                "duty.on-rms-mean",
                Formats.amps(Math.abs(flow.onAmps())),
                Formats.amps(flow.rmsAmps()),
                Formats.amps(Math.abs(flow.amps())));
    }
}
