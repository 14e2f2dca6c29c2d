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

/** What wires that switch put onto signal wires beside them. */
public final class CouplingStudy implements Study<Coupling> {

    @Override
    public String key() {
        return "returns-coupling";
    }

    @Override
    public String title() {
        return "Coupling";
    }

    @Override
    public String about() {
        return "What wires that switch put onto signal wires beside them in the bundle";
    }

    @Override
    public List<Column<Coupling>> columns() {
        return List.of(
                Column.text("Onto", "Signal wire", 7, row -> row.victim().value()),
                Column.text(
                        "From", "Wire that switches", 7, row -> row.culprit().value()),
                Column.number("Together", "m", "Length they lie side by side", row -> CellText.of(row.lengthMetres())),
                Column.number(
                        "Apart", "mm", "Distance of their centres", row -> CellText.of(1000 * row.separationMetres())),
                Column.number(
                        "Electric", "mV", "By the electric field", row -> ReturnRows.millivolts(row.capacitiveVolts())),
                Column.number(
                        "Magnetic", "mV", "By the magnetic field", row -> ReturnRows.millivolts(row.inductiveVolts())),
                Column.number(
                        "At input",
                        "mV",
                        "Together, after twist and shield",
                        row -> ReturnRows.millivolts(row.volts())),
                Column.number(
                        "Filtered",
                        "mV",
                        "After the input's filter",
                        row -> ReturnRows.millivolts(row.filteredVolts())),
                Column.number("May be", "mV", "Share of the allowed error", CouplingStudy::limit),
                Column.text("State", "Operating state", 10, row -> row.state().value()));
    }

    private static CellText limit(Coupling row) {
        CellText cell = ReturnRows.millivolts(row.limitVolts());
        return row.limitVolts().isPresent()
                        && ReturnReadings.left(row) > row.limitVolts().getAsDouble()
                ? ReturnRows.over(cell, Formats.volts(ReturnReadings.left(row)) + " is more")
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
        return "No wire that switches lies beside a signal wire. Coupling is told where the layout has bundle segments with"
                + " lengths, an output that runs at a duty, and a signal wire in the same bundle.";
    }

    @Override
    public Optional<Picture> picture(Readout readout, Coupling row, Optional<String> selected) {
        return CouplingCharts.of(rows(readout))
                .map(chart -> new Picture(
                        chart.title() + ": the largest first",
                        (fonts, widthMm, heightMm) -> chart.scene(fonts, widthMm)));
    }

    @Override
    public List<String> steps(Readout readout, Coupling row) {
        return List.of(
                row.culprit() + " lies beside " + row.victim() + " for " + Formats.metres(row.lengthMetres()) + ", "
                        + Formats.metres(row.separationMetres())
                        + " from centre to centre: insulation on insulation, the worst"
                        + " they can lie. Its edge is "
                        + Formats.volts(row.edge().volts()) + " and "
                        + Formats.amps(row.edge().amps()) + " in "
                        + Formats.seconds(row.edge().seconds()) + ".",
                "Guarded by: " + row.guardedBy() + ".",
                "Electric field " + Formats.volts(row.capacitiveVolts()) + ", magnetic field "
                        + Formats.volts(row.inductiveVolts()) + " at the edge; together, after twist and shield, "
                        + Formats.volts(row.volts()) + " at the input.",
                row.filteredVolts().isPresent()
                        ? "After the input's filter: "
                                + Formats.volts(row.filteredVolts().getAsDouble()) + "."
                        : "The corner of the input's filter is not entered; nothing is taken off for it.",
                row.limitVolts().isPresent()
                        ? "May be " + Formats.volts(row.limitVolts().getAsDouble())
                                + ": the share of the sensor's allowed error that coupling may take."
                        : "Not held against a limit: the error of the sensor cannot be judged.");
    }
}
