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
import org.ohmloom.workbench.words.Term;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** The sensors: what they measure, what they give for it, and how far off they read. */
final class SensorSheet implements ElementSheet<SensorSheet.Row> {
    private static final Words WORDS = Words.of("lists");

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
                                    .map(part -> Words.said(part.named()) + ": " + Words.said(part.worked()))
                                    .orElse("")))
                    .orElse(CellText.EMPTY);
        }
    }

    @Override
    public String title() {
        return WORDS.get("sensor.sensors");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(WORDS.term("sensor.sensor"), WORDS.get("sensor.sensor.about"), 9, row -> row.component()
                        .id()
                        .value()),
                Column.text(WORDS.term("sensor.name"), WORDS.get("sensor.name.about"), 20, row -> row.component()
                        .name()),
                Column.text(
                        WORDS.term("sensor.kind"),
                        WORDS.get("sensor.kind.about"),
                        18,
                        row -> TradeWords.kind(row.component().device())),
                edited(
                        WORDS.term("sensor.gives"),
                        CalibrationText.FORMS,
                        24,
                        row -> row.text(each -> CalibrationText.of(each.calibration())),
                        SensorEdits::calibration),
                edited(
                        WORDS.term("sensor.measures"),
                        WORDS.get("sensor.measures.about"),
                        18,
                        row -> row.text(Measurement::quantity),
                        SensorEdits::quantity),
                edited(
                        WORDS.term("sensor.range"),
                        WORDS.get("sensor.range.about"),
                        14,
                        row -> row.text(SensorEdits::range),
                        SensorEdits::range),
                edited(
                        WORDS.term("sensor.may-err-by"),
                        WORDS.get("sensor.may-err-by.about"),
                        10,
                        row -> row.number(Measurement::allowedError).text(),
                        SensorEdits::allowed),
                edited(
                        WORDS.term("sensor.warms-by"),
                        WORDS.get("sensor.warms-by.about"),
                        10,
                        row -> row.text(each -> each.dissipationWattsPerKelvin().isPresent()
                                ? Formats.watts(each.dissipationWattsPerKelvin().getAsDouble()) + "/K"
                                : ""),
                        SensorEdits::dissipation),
                Column.text(WORDS.term("sensor.read-at"), WORDS.get("sensor.read-at.about"), 10, row -> row.worst()
                        .map(budget -> budget.unit() + "." + budget.pin())
                        .orElse("")),
                Column.number(WORDS.term("sensor.errs-by"), "", WORDS.get("sensor.errs-by.about"), Row::error),
                Column.text(WORDS.term("sensor.mostly-by"), WORDS.get("sensor.mostly-by.about"), 18, row -> row.worst()
                        .flatMap(SensorBudget::largest)
                        .map(part -> Words.said(part.named()))
                        .orElse("")));
    }

    private static Column<Row> edited(
            Term title,
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
