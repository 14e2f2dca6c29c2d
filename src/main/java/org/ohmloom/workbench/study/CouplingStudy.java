package org.ohmloom.workbench.study;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.draw.study.CouplingCharts;
import org.ohmloom.draw.study.ReturnReadings;
import org.ohmloom.ground.coupling.Coupling;
import org.ohmloom.model.ElementId;
import org.ohmloom.review.StudyPart;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.words.Words;

/** What wires that switch put onto signal wires beside them. */
public final class CouplingStudy implements Study<Coupling> {
    private static final Words WORDS = Words.of("studies");

    @Override
    public String key() {
        return "returns-coupling";
    }

    @Override
    public String title() {
        return WORDS.get("coupling.coupling");
    }

    @Override
    public String about() {
        return WORDS.get("coupling.what-wires-that-switch");
    }

    @Override
    public List<Column<Coupling>> columns() {
        return List.of(
                Column.text(WORDS.term("coupling.onto"), WORDS.get("coupling.onto.about"), 7, row -> row.victim()
                        .value()),
                Column.text(WORDS.term("coupling.from"), WORDS.get("coupling.from.about"), 7, row -> row.culprit()
                        .value()),
                Column.number(
                        WORDS.term("coupling.together"),
                        "m",
                        WORDS.get("coupling.together.about"),
                        row -> CellText.of(row.lengthMetres())),
                Column.number(
                        WORDS.term("coupling.apart"),
                        "mm",
                        WORDS.get("coupling.apart.about"),
                        row -> CellText.of(1000 * row.separationMetres())),
                Column.number(
                        WORDS.term("coupling.electric"),
                        "mV",
                        WORDS.get("coupling.electric.about"),
                        row -> ReturnRows.millivolts(row.capacitiveVolts())),
                Column.number(
                        WORDS.term("coupling.magnetic"),
                        "mV",
                        WORDS.get("coupling.magnetic.about"),
                        row -> ReturnRows.millivolts(row.inductiveVolts())),
                Column.number(
                        WORDS.term("coupling.at-input"),
                        "mV",
                        WORDS.get("coupling.at-input.about"),
                        row -> ReturnRows.millivolts(row.volts())),
                Column.number(
                        WORDS.term("coupling.filtered"),
                        "mV",
                        WORDS.get("coupling.filtered.about"),
                        row -> ReturnRows.millivolts(row.filteredVolts())),
                Column.number(
                        WORDS.term("coupling.may-be"), "mV", WORDS.get("coupling.may-be.about"), CouplingStudy::limit),
                Column.text(WORDS.term("coupling.state"), WORDS.get("coupling.state.about"), 10, row -> row.state()
                        .value()));
    }

    private static CellText limit(Coupling row) {
        CellText cell = ReturnRows.millivolts(row.limitVolts());
        return row.limitVolts().isPresent()
                        && ReturnReadings.left(row) > row.limitVolts().getAsDouble()
                ? ReturnRows.over(cell, WORDS.get("coupling.is-more", Formats.volts(ReturnReadings.left(row))))
                : cell;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.COUPLINGS);
    }

    @Override
    public List<Coupling> rows(Readout readout) {
        return ReturnReadings.couplings(ReturnRows.study(readout), readout.state());
    }

    @Override
    public ElementId id(Coupling row) {
        return row.victim();
    }

    @Override
    public List<ElementId> path(Readout readout, Coupling row) {
        return List.of(row.culprit());
    }

    @Override
    public String nothing(Readout readout) {
        return WORDS.get("coupling.no-wire-that-switches");
    }

    @Override
    public Optional<Picture> picture(Readout readout, Coupling row, Optional<String> selected) {
        return CouplingCharts.of(rows(readout))
                .map(chart -> new Picture(
                        WORDS.get("coupling.the-largest-first", chart.title()),
                        (fonts, widthMm, heightMm) -> chart.scene(fonts, widthMm)));
    }

    @Override
    public List<String> steps(Readout readout, Coupling row) {
        return List.of(
                WORDS.get(
                        "coupling.lies-beside-for-from",
                        row.culprit(),
                        row.victim(),
                        Formats.metres(row.lengthMetres()),
                        Formats.metres(row.separationMetres()),
                        Formats.volts(row.edge().volts()),
                        Formats.amps(row.edge().amps()),
                        Formats.seconds(row.edge().seconds())),
                WORDS.get("coupling.guarded-by", row.guardedBy()),
                WORDS.get(
                        "coupling.electric-field-magnetic-field",
                        Formats.volts(row.capacitiveVolts()),
                        Formats.volts(row.inductiveVolts()),
                        Formats.volts(row.volts())),
                row.filteredVolts().isPresent()
                        ? WORDS.get(
                                "coupling.after-the-inputs-filter",
                                Formats.volts(row.filteredVolts().getAsDouble()))
                        : WORDS.get("coupling.the-corner-of-the"),
                row.limitVolts().isPresent()
                        ? WORDS.get(
                                "coupling.may-be-the-share",
                                Formats.volts(row.limitVolts().getAsDouble()))
                        : WORDS.get("coupling.not-held-against-a"));
    }
}
