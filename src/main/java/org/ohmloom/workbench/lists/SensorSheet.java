package org.ohmloom.workbench.lists;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.ohmloom.edit.Edit;
import org.ohmloom.ground.sensor.SensorBudget;
import org.ohmloom.model.Component;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Sensor;
import org.ohmloom.review.StudyPart;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.ElementSheet;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.CalibrationText;
import org.ohmloom.workbench.words.TradeWords;

/** The sensors: what they measure, what they give for it, and how far off they read. */
final class SensorSheet implements ElementSheet<SensorSheet.Row> {

    /**
     * One sensor.
     *
     * @param component the sensor
     * @param worst     its worst budget in the state asked for, or of all
     */
    record Row(Component component, Optional<SensorBudget> worst) {

        Sensor sensor() {
            return (Sensor) component.device();
        }

        String text(Function<Measurement, String> value) {
            return sensor().measurement().map(value).orElse("");
        }

        CellText number(Function<Measurement, OptionalDouble> value) {
            return sensor().measurement().map(value).map(CellText::of).orElse(CellText.EMPTY);
        }

        private CellText error() {
            return worst.map(budget -> CellText.of(
                                    Formats.number(budget.worstError()) + " " + budget.quantityUnit(),
                                    budget.allowed() > 0 ? budget.worstError() / budget.allowed() : Double.MAX_VALUE)
                            .in(
                                    budget.unusable().isPresent()
                                            ? Tone.ERROR
                                            : budget.isOver() ? Tone.WARNING : Tone.PLAIN)
                            .saying(budget.largest()
                                    .map(part -> part.name() + ": " + part.formula())
                                    .orElse("")))
                    .orElse(CellText.EMPTY);
        }
    }

    @Override
    public String title() {
        return "Sensors";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text("Sensor", "Identity of the sensor", 9, row -> row.component()
                        .id()
                        .value()),
                Column.text("Name", "What people call it", 20, row -> row.component()
                        .name()),
                Column.text(
                        "Kind",
                        "How it works",
                        18,
                        row -> TradeWords.kind(row.component().device())),
                edited(
                        "Gives",
                        CalibrationText.HINT,
                        24,
                        row -> row.text(each -> CalibrationText.of(each.calibration())),
                        SensorEdits::calibration),
                edited(
                        "Measures",
                        "What it measures",
                        18,
                        row -> row.text(Measurement::quantity),
                        SensorEdits::quantity),
                edited(
                        "Range",
                        "Lowest and highest value used and their unit, as 0 to 10 bar",
                        14,
                        row -> row.text(SensorEdits::range),
                        SensorEdits::range),
                edited(
                        "May err by",
                        "Most error in its unit; empty means the share of the range in the rules",
                        10,
                        row -> row.number(Measurement::allowedError).text(),
                        SensorEdits::allowed),
                edited(
                        "Warms by",
                        "Power that warms it by 1 K, as 8 mW/K; empty when not known",
                        10,
                        row -> row.text(each -> each.dissipationWattsPerKelvin().isPresent()
                                ? Formats.watts(each.dissipationWattsPerKelvin().getAsDouble()) + "/K"
                                : ""),
                        SensorEdits::dissipation),
                Column.text("Read at", "Control unit and pin that read it", 10, row -> row.worst()
                        .map(budget -> budget.unit() + "." + budget.pin())
                        .orElse("")),
                Column.number("Errs by", "", "Largest error: known parts, tolerances and ripple together", Row::error),
                Column.text("Mostly by", "Largest part of it", 18, row -> row.worst()
                        .flatMap(SensorBudget::largest)
                        .map(SensorBudget.ErrorPart::name)
                        .orElse("")));
    }

    private static Column<Row> edited(
            String title,
            String tip,
            int letters,
            Function<Row, String> cell,
            BiFunction<List<Component>, String, Edit> parse) {
        return Column.text(title, tip, letters, cell)
                .quantities()
                .edited(ColumnEdits.<Row, Component>of(row -> true, cell, Row::component, parse));
    }

    @Override
    public List<Row> rows(Readout readout) {
        return readout.harness().components().all().stream()
                .filter(component -> component.device() instanceof Sensor)
                .map(component -> new Row(component, worst(readout, component)))
                .toList();
    }

    private static Optional<SensorBudget> worst(Readout readout, Component component) {
        return readout.having(Set.of(StudyPart.SENSORS)).analysis().stream()
                .flatMap(results -> results.evidence().returns().sensors().stream())
                .filter(budget -> budget.sensor().equals(component.id()))
                .filter(budget ->
                        readout.state().isEmpty() || readout.state().get().equals(budget.state()))
                .max(Comparator.comparing(
                                (SensorBudget budget) -> budget.unusable().isPresent())
                        .thenComparingDouble(
                                budget -> budget.worstError() / Math.max(budget.allowed(), Double.MIN_NORMAL)));
    }

    @Override
    public ElementId id(Row row) {
        return row.component().id();
    }
}
