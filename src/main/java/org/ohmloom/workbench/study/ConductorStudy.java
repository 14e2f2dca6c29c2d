package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.study.BudgetCharts;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Wire;
import org.ohmloom.review.StudyPart;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.Governor;
import org.ohmloom.size.JointChoice;
import org.ohmloom.size.Requirement;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Term;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** The size every wire needs, what asks for it, and how the open sizes were chosen together. */
public final class ConductorStudy implements Study<ConductorStudy.Row> {
    private static final Words WORDS = Words.of("studies");

    /**
     * A wire with what is asked of it.
     *
     * @param wire   the wire
     * @param choice the size it needs, and why
     * @param chosen the size it got when the open sizes were chosen together
     */
    record Row(Wire wire, ConductorChoice choice, Optional<Gauge> chosen) {

        CellText has() {
            Optional<Gauge> own = wire.gauge();
            if (own.isEmpty()) {
                return CellText.of(WORDS.get("conductor.open")).in(Tone.SOFT);
            }
            CellText text = size(own);
            boolean small = choice.gauge()
                    .filter(needed -> needed.nominalAreaMm2() > own.get().nominalAreaMm2())
                    .isPresent();
            return small ? text.in(Tone.ERROR).saying(WORDS.get("conductor.smaller-than-it-needs")) : text;
        }

        CellText asks(Governor governor) {
            return choice.requirements().stream()
                    .filter(each -> each.governor() == governor)
                    .findFirst()
                    .map(Row::asked)
                    .orElse(CellText.EMPTY);
        }

        private static CellText asked(Requirement required) {
            return required.smallest().isEmpty()
                    ? CellText.of(WORDS.get("conductor.none-serves"))
                            .in(Tone.ERROR)
                            .saying(Words.said(required.why()))
                    : size(required.smallest()).saying(Words.said(required.why()));
        }

        private static CellText size(Optional<Gauge> gauge) {
            return gauge.map(each -> CellText.of(TradeWords.size(each), each.nominalAreaMm2()))
                    .orElse(CellText.EMPTY);
        }
    }

    @Override
    public String key() {
        return "conductors";
    }

    @Override
    public String title() {
        return WORDS.get("conductor.conductors");
    }

    @Override
    public String about() {
        return WORDS.get("conductor.the-size-every-wire");
    }

    @Override
    public List<Column<Row>> columns() {
        List<Column<Row>> columns = new ArrayList<>();
        columns.add(Column.text(WORDS.term("conductor.wire"), WORDS.get("conductor.wire.about"), 7, row -> row.wire()
                .id()
                .value()));
        columns.add(new Column<Row>(
                        WORDS.term("conductor.has"),
                        "",
                        WORDS.get("conductor.has.about"),
                        8,
                        Row::has,
                        Optional.empty())
                .sizes());
        columns.add(new Column<Row>(
                        WORDS.term("conductor.needs"),
                        "",
                        WORDS.get("conductor.needs.about"),
                        8,
                        row -> Row.size(row.choice().gauge()),
                        Optional.empty())
                .sizes());
        columns.add(Column.text(
                WORDS.term("conductor.because-of"),
                WORDS.get("conductor.because-of.about"),
                16,
                row -> TradeWords.named(row.choice().governing().governor())));
        columns.add(new Column<Row>(
                        WORDS.term("conductor.together"),
                        "",
                        WORDS.get("conductor.together.about"),
                        8,
                        row -> Row.size(row.chosen()),
                        Optional.empty())
                .sizes());
        for (Governor governor : Governor.values()) {
            columns.add(new Column<Row>(
                            new Term(governor.name(), TradeWords.capital(TradeWords.named(governor))),
                            "",
                            WORDS.get("conductor.smallest-size-for-the", TradeWords.named(governor)),
                            9,
                            row -> row.asks(governor),
                            Optional.empty())
                    .sizes());
        }
        return columns;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.SIZES);
    }

    @Override
    public List<Row> rows(Readout readout) {
        List<Row> rows = new ArrayList<>();
        readout.analysis().ifPresent(results -> results.conductors().forEach((id, choice) -> readout.harness()
                .wires()
                .find(id)
                .ifPresent(wire -> rows.add(new Row(
                        wire,
                        choice,
                        Optional.ofNullable(results.evidence().joint().sizes().get(id)))))));
        return rows;
    }

    @Override
    public ElementId id(Row row) {
        return row.wire().id();
    }

    @Override
    public String nothing(Readout readout) {
        return WORDS.get("conductor.no-wire-can-be");
    }

    @Override
    public Optional<Picture> picture(Readout readout, Row row, Optional<String> selected) {
        return readout.analysis()
                .flatMap(results ->
                        BudgetCharts.of(readout.harness(), results.evidence().joint()))
                .map(chart -> new Picture(
                        chart.title() + ". " + chart.subtitle(),
                        (fonts, widthMm, heightMm) -> chart.scene(fonts, widthMm)));
    }

    @Override
    public List<String> steps(Readout readout, Row row) {
        List<String> steps = new ArrayList<>();
        for (Requirement required : row.choice().requirements()) {
            boolean governs = required.equals(row.choice().governing());
            steps.add(row.wire().id() + ", " + TradeWords.named(required.governor()) + ": "
                    + required.smallest().map(TradeWords::size).orElse(WORDS.get("conductor.no-size-serves"))
                    + (governs ? WORDS.get("conductor.governs") : "") + "; " + Words.said(required.why()));
        }
        readout.analysis().map(Analysis::evidence).ifPresent(evidence -> steps.addAll(together(evidence.joint())));
        return steps;
    }

    private static List<String> together(JointChoice joint) {
        List<String> steps = new ArrayList<>();
        steps.add(WORDS.get("conductor.all-wires-together", joint.told()));
        steps.add(Words.said(BudgetCharts.copper(joint)) + ".");
        if (joint.outcome() != JointChoice.Outcome.NOTHING_OPEN) {
            steps.add(
                    joint.isProvenLeast()
                            ? WORDS.get("conductor.proven-no-other-choice")
                            : WORDS.get(
                                    "conductor.no-choice-takes-less",
                                    sum(joint, joint.lowerBound()),
                                    Formats.percent(joint.gapRatio())));
        }
        joint.unmet().forEach(each -> steps.add(WORDS.get("conductor.no-choice-of-the", each)));
        steps.addAll(Words.said(joint.steps()));
        return steps;
    }

    private static String sum(JointChoice joint, double value) {
        return joint.isPrice()
                ? WORDS.get("conductor.a-price-of", String.format(Locale.ROOT, "%.2f", value))
                : WORDS.get("conductor.of-copper", Formats.kilograms(value));
    }
}
