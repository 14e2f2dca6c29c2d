package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.draw.study.ReturnReadings;
import org.ohmloom.draw.study.SensorCharts;
import org.ohmloom.ground.sensor.SensorBudget;
import org.ohmloom.ground.sensor.Unjudged;
import org.ohmloom.model.ElementId;
import org.ohmloom.review.StudyPart;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;

/** How far off every sensor reads, in its own unit, for what feed, returns and wires do to it. */
public final class SensorStudy implements Study<SensorBudget> {

    @Override
    public String key() {
        return "returns-sensors";
    }

    @Override
    public String title() {
        return "Sensor errors";
    }

    @Override
    public String about() {
        return "How far off every sensor reads, in its own unit, and what makes it";
    }

    @Override
    public List<Column<SensorBudget>> columns() {
        return List.of(
                Column.text("Sensor", "The sensor", 8, row -> row.sensor().value()),
                Column.number("Largest", "", "Known errors, tolerances and ripple together", SensorStudy::worst),
                Column.text("Unit", "Unit of what it measures", 5, SensorBudget::quantityUnit),
                Column.number("Allowed", "", "Most error it may have", row -> CellText.of(row.allowed())),
                Column.number(
                        "Used", "%", "Share of the allowed error", row -> CellText.of(100 * ReturnReadings.use(row))),
                Column.number(
                        "Known", "", "Errors of this state with their signs", row -> CellText.of(row.knownError())),
                Column.number("Tolerances", "", "Root of the sum of squares", row -> CellText.of(row.toleranceError())),
                Column.number("Ripple", "", "After the input's filter", row -> CellText.of(row.ripple())),
                Column.text("Read by", "Control unit and pin", 9, row -> row.unit() + " " + row.pin()),
                Column.text("State", "State in which it is largest, or the one asked for", 10, row -> row.state()
                        .value()));
    }

    private static CellText worst(SensorBudget row) {
        CellText cell = CellText.of(row.worstError());
        return ReturnReadings.use(row) > 1 + 1e-9
                ? ReturnRows.over(cell, "More than " + Formats.number(row.allowed()) + " " + row.quantityUnit())
                : cell;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.SENSORS);
    }

    @Override
    public List<SensorBudget> rows(Readout readout) {
        return ReturnReadings.sensors(ReturnRows.study(readout), readout.state());
    }

    @Override
    public ElementId id(SensorBudget row) {
        return row.sensor();
    }

    @Override
    public String nothing(Readout readout) {
        String open = String.join("\n", open(readout));
        return "No sensor can be judged. A sensor needs what it measures and its span, and must be read at a pin of a control"
                + " unit whose input is described." + (open.isEmpty() ? "" : "\n" + open);
    }

    @Override
    public Optional<Picture> picture(Readout readout, SensorBudget row, Optional<String> selected) {
        var chart = SensorCharts.of(readout.harness(), row);
        return Optional.of(new Picture(
                chart.title() + ": its error budget", (fonts, widthMm, heightMm) -> chart.scene(fonts, widthMm)));
    }

    @Override
    public List<String> steps(Readout readout, SensorBudget row) {
        List<String> steps = new ArrayList<>();
        steps.add(row.sensor() + " at " + value(row, row.reading()) + " in " + readout.stateName(row.state())
                + ": largest error " + value(row, row.worstError()) + ", allowed " + value(row, row.allowed()) + " ("
                + row.allowedFrom() + ").");
        row.known().forEach(part -> steps.add(part(row, part)));
        row.tolerances().forEach(part -> steps.add("± " + part(row, part)));
        row.ripple().ifPresent(ripple -> steps.add("Ripple after the filter: " + value(row, ripple) + "."));
        if (row.ripple().isEmpty()) {
            steps.add("Ripple: not judged, the corner of the input's filter is not entered.");
        }
        steps.addAll(open(readout));
        return steps;
    }

    private static List<String> open(Readout readout) {
        return ReturnRows.study(readout).unjudged().stream()
                .filter(each -> each.study() == Unjudged.Study.SENSORS)
                .map(Unjudged::sentence)
                .toList();
    }

    private static String part(SensorBudget row, SensorBudget.ErrorPart part) {
        return part.name() + " " + value(row, part.error()) + ": " + part.formula()
                + (part.source().isEmpty() ? "" : " (" + part.source() + ")");
    }

    private static String value(SensorBudget row, double value) {
        return Formats.number(value) + " " + row.quantityUnit();
    }
}
