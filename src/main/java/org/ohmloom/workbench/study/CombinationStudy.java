package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.chart.BarChart;
import org.ohmloom.draw.study.CombinationCharts;
import org.ohmloom.draw.study.WorstCase;
import org.ohmloom.model.ElementId;
import org.ohmloom.review.StudyPart;
import org.ohmloom.solve.envelope.Envelope;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Words;

/** The worst current of every wire and the worst drop of every load over all combinations that are allowed. */
public final class CombinationStudy implements Study<WorstCase> {
    private static final Words WORDS = Words.of("studies");

    private static final double PERCENT = 100;
    private static final int MOST_BARS = 24;

    @Override
    public String key() {
        return "combinations";
    }

    @Override
    public String title() {
        return WORDS.get("combination.worst-case");
    }

    @Override
    public String about() {
        return WORDS.get("combination.the-worst-current-of");
    }

    @Override
    public List<Column<WorstCase>> columns() {
        return List.of(
                Column.text(
                        WORDS.term("combination.wire-or-load"),
                        WORDS.get("combination.wire-or-load.about"),
                        15,
                        WorstCase::label),
                Column.<WorstCase>number(
                                WORDS.term("combination.worst"), "", WORDS.get("combination.worst.about"), row -> {
                                    CellText text = amount(row, row.worst());
                                    return row.isTooMuch()
                                            ? text.in(Tone.ERROR).saying(WORDS.get("combination.more-than-allowed"))
                                            : text;
                                })
                        .wide(8),
                Column.<WorstCase>number(
                                WORDS.term("combination.in-states"),
                                "",
                                WORDS.get("combination.in-states.about"),
                                row -> amount(row, row.named()))
                        .wide(8),
                Column.<WorstCase>number(
                        WORDS.term("combination.more-by"),
                        "%",
                        WORDS.get("combination.more-by.about"),
                        row -> Double.isInfinite(row.moreRatio())
                                ? CellText.EMPTY
                                : CellText.of(PERCENT * Math.max(0, row.moreRatio()))),
                Column.<WorstCase>number(
                                WORDS.term("combination.allowed"),
                                "",
                                WORDS.get("combination.allowed.about"),
                                row -> row.allowed().isPresent()
                                        ? amount(row, row.allowed().getAsDouble())
                                        : CellText.EMPTY)
                        .wide(8),
                Column.text(
                        WORDS.term("combination.certain"),
                        WORDS.get("combination.certain.about"),
                        8,
                        row -> row.proven() ? WORDS.get("combination.proven") : WORDS.get("combination.found")),
                Column.text(
                        WORDS.term("combination.while-these-run"),
                        WORDS.get("combination.while-these-run.about"),
                        30,
                        WorstCase::loadsText),
                Column.text(
                        WORDS.term("combination.with"),
                        WORDS.get("combination.with.about"),
                        30,
                        row -> Words.said(row.situated())));
    }

    private static CellText amount(WorstCase row, double value) {
        return CellText.of(row.isDrop() ? Formats.volts(value) : Formats.amps(value), value);
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.ENVELOPE);
    }

    @Override
    public List<WorstCase> rows(Readout readout) {
        List<WorstCase> rows = new ArrayList<>();
        readout.analysis().ifPresent(analysis -> {
            rows.addAll(WorstCase.currents(analysis));
            rows.addAll(WorstCase.drops(analysis));
        });
        rows.sort(Comparator.comparingDouble(WorstCase::useRatio).reversed());
        return rows;
    }

    @Override
    public ElementId id(WorstCase row) {
        return row.element();
    }

    @Override
    public String nothing(Readout readout) {
        String notes = readout.analysis()
                .map(results -> String.join(
                        "\n", Words.said(results.evidence().envelope().notes())))
                .orElse("");
        return WORDS.get("combination.no-load-runs-in", notes.isEmpty() ? "" : "\n" + notes);
    }

    @Override
    public Optional<Picture> picture(Readout readout, WorstCase row, Optional<String> selected) {
        Optional<BarChart> chart = readout.analysis()
                .flatMap(analysis -> row.isDrop()
                        ? CombinationCharts.drops(analysis, MOST_BARS)
                        : CombinationCharts.currents(analysis, MOST_BARS));
        return chart.map(each -> new Picture(
                WORDS.get("combination.beside-the-worst-of", each.title()),
                (fonts, widthMm, heightMm) -> each.scene(fonts, widthMm)));
    }

    @Override
    public List<String> steps(Readout readout, WorstCase row) {
        List<String> steps = new ArrayList<>();
        steps.add(WORDS.get(
                "combination.while-run",
                row.label(),
                row.isDrop() ? WORDS.get("combination.loses-at-worst") : WORDS.get("combination.carries-at-worst"),
                amount(row, row.worst()).text(),
                row.isDrop() ? "" : " RMS",
                row.loads().isEmpty() ? WORDS.get("combination.nothing") : row.loadsText(),
                row.loads().size() == 1 ? "s" : "",
                row.situated()));
        steps.add(
                row.proven()
                        ? WORDS.get("combination.proven-no-allowed-combination")
                        : WORDS.get("combination.not-proven", bound(row.bound(), row)));
        readout.analysis().map(Analysis::evidence).ifPresent(evidence -> {
            Envelope envelope = evidence.envelope();
            if (!envelope.hasGroups()) {
                steps.add(WORDS.get("combination.no-load-groups-are"));
            }
            if (!envelope.never().isEmpty()) {
                steps.add(WORDS.get(
                        "combination.in-no-state-that",
                        envelope.never().stream()
                                .map(id -> id.value())
                                .reduce((one, other) -> one + ", " + other)
                                .orElse("")));
            }
            steps.addAll(Words.said(envelope.notes()));
            envelope.situations().stream()
                    .filter(situation -> situation.name().equals(row.situation()))
                    .findFirst()
                    .ifPresent(situation -> steps.addAll(Words.said(situation.steps())));
        });
        return steps;
    }

    private static String bound(OptionalDouble bound, WorstCase row) {
        return bound.isPresent()
                ? WORDS.get(
                        "combination.none-is-worse-than",
                        amount(row, bound.getAsDouble()).text())
                : "";
    }
}
