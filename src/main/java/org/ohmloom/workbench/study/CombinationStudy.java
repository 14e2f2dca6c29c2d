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

/** The worst current of every wire and the worst drop of every load over all combinations that are allowed. */
public final class CombinationStudy implements Study<WorstCase> {

    private static final double PERCENT = 100;
    private static final int MOST_BARS = 24;

    @Override
    public String key() {
        return "combinations";
    }

    @Override
    public String title() {
        return "Worst case";
    }

    @Override
    public String about() {
        return "The worst current of every wire and drop of every load over all combinations of loads that are allowed";
    }

    @Override
    public List<Column<WorstCase>> columns() {
        return List.of(
                Column.text("Wire or load", "What is looked at", 15, WorstCase::label),
                Column.<WorstCase>number("Worst", "", "Of any allowed combination: heating current or drop", row -> {
                            CellText text = amount(row, row.worst());
                            return row.isTooMuch() ? text.in(Tone.ERROR).saying("More than allowed") : text;
                        })
                        .wide(8),
                Column.<WorstCase>number(
                                "In states", "", "Worst of the operating states", row -> amount(row, row.named()))
                        .wide(8),
                Column.<WorstCase>number(
                        "More by",
                        "%",
                        "Than in the operating states",
                        row -> Double.isInfinite(row.moreRatio())
                                ? CellText.EMPTY
                                : CellText.of(PERCENT * Math.max(0, row.moreRatio()))),
                Column.<WorstCase>number(
                                "Allowed",
                                "",
                                "What the wire may carry, what the load may lose",
                                row -> row.allowed().isPresent()
                                        ? amount(row, row.allowed().getAsDouble())
                                        : CellText.EMPTY)
                        .wide(8),
                Column.text(
                        "Certain",
                        "Whether it is proven that no combination is worse",
                        8,
                        row -> row.proven() ? "proven" : "found"),
                Column.text("While these run", "Loads of the combination", 30, WorstCase::loadsText),
                Column.text("With", "How the sources are found", 30, WorstCase::situation));
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
                .map(results -> String.join("\n", results.evidence().envelope().notes()))
                .orElse("");
        return "No load runs in an operating state that lasts. Put loads on in one. Load groups say which loads never run"
                + " together, which always do, and how many at most." + (notes.isEmpty() ? "" : "\n" + notes);
    }

    @Override
    public Optional<Picture> picture(Readout readout, WorstCase row, Optional<String> selected) {
        Optional<BarChart> chart = readout.analysis()
                .flatMap(analysis -> row.isDrop()
                        ? CombinationCharts.drops(analysis, MOST_BARS)
                        : CombinationCharts.currents(analysis, MOST_BARS));
        return chart.map(each -> new Picture(
                each.title() + " beside the worst of the named states",
                (fonts, widthMm, heightMm) -> each.scene(fonts, widthMm)));
    }

    @Override
    public List<String> steps(Readout readout, WorstCase row) {
        List<String> steps = new ArrayList<>();
        steps.add(row.label() + (row.isDrop() ? " loses at worst " : " carries at worst ")
                + amount(row, row.worst()).text() + (row.isDrop() ? "" : " RMS") + " while "
                + (row.loads().isEmpty() ? "nothing" : row.loadsText()) + " run"
                + (row.loads().size() == 1 ? "s" : "") + ", " + row.situation() + ".");
        steps.add(
                row.proven()
                        ? "Proven: no allowed combination is worse."
                        : "Not proven" + bound(row.bound(), row) + ".");
        readout.analysis().map(Analysis::evidence).ifPresent(evidence -> {
            Envelope envelope = evidence.envelope();
            if (!envelope.hasGroups()) {
                steps.add("No load groups are entered, so everything the wiring makes possible counts as allowed.");
            }
            if (!envelope.never().isEmpty()) {
                steps.add("In no state that lasts, so left out: "
                        + envelope.never().stream()
                                .map(id -> id.value())
                                .reduce((one, other) -> one + ", " + other)
                                .orElse("")
                        + ".");
            }
            steps.addAll(envelope.notes());
            envelope.situations().stream()
                    .filter(situation -> situation.name().equals(row.situation()))
                    .findFirst()
                    .ifPresent(situation -> steps.addAll(situation.steps()));
        });
        return steps;
    }

    private static String bound(OptionalDouble bound, WorstCase row) {
        return bound.isPresent()
                ? "; none is worse than " + amount(row, bound.getAsDouble()).text()
                : "";
    }
}
