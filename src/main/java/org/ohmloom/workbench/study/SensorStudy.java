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
import org.ohmloom.workbench.words.Words;

/** How far off every sensor reads, in its own unit, for what feed, returns and wires do to it. */
public final class SensorStudy implements Study<SensorBudget> {
    private static final Words WORDS = Words.of("studies");

    @Override
    public String key() {
        return "returns-sensors";
    }

    @Override
    public String title() {
        return WORDS.get("sensor.sensor-errors");
    }

    @Override
    public String about() {
        return WORDS.get("sensor.how-far-off-every");
    }

    @Override
    public List<Column<SensorBudget>> columns() {
        return List.of(
                Column.text(WORDS.term("sensor.sensor"), WORDS.get("sensor.sensor.about"), 8, row -> row.sensor()
                        .value()),
                Column.number(WORDS.term("sensor.largest"), "", WORDS.get("sensor.largest.about"), SensorStudy::worst),
                Column.text(WORDS.term("sensor.unit"), WORDS.get("sensor.unit.about"), 5, SensorBudget::quantityUnit),
                Column.number(
                        WORDS.term("sensor.allowed"),
                        "",
                        WORDS.get("sensor.allowed.about"),
                        row -> CellText.of(row.allowed())),
                Column.number(
                        WORDS.term("sensor.used"),
                        "%",
                        WORDS.get("sensor.used.about"),
                        row -> CellText.of(100 * ReturnReadings.use(row))),
                Column.number(
                        WORDS.term("sensor.known"),
                        "",
                        WORDS.get("sensor.known.about"),
                        row -> CellText.of(row.knownError())),
                Column.number(
                        WORDS.term("sensor.tolerances"),
                        "",
                        WORDS.get("sensor.tolerances.about"),
                        row -> CellText.of(row.toleranceError())),
                Column.number(
                        WORDS.term("sensor.ripple"),
                        "",
                        WORDS.get("sensor.ripple.about"),
                        row -> CellText.of(row.ripple())),
                Column.text(
                        WORDS.term("sensor.read-by"),
                        WORDS.get("sensor.read-by.about"),
                        9,
                        row -> row.unit() + " " + row.pin()),
                Column.text(WORDS.term("sensor.state"), WORDS.get("sensor.state.about"), 10, row -> row.state()
                        .value()));
    }

    private static CellText worst(SensorBudget row) {
        CellText cell = CellText.of(row.worstError());
        return ReturnReadings.use(row) > 1 + 1e-9
                ? ReturnRows.over(
                        cell, WORDS.get("sensor.more-than", Formats.number(row.allowed()), row.quantityUnit()))
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
        return WORDS.get("sensor.no-sensor-can-be", open.isEmpty() ? "" : "\n" + open);
    }

    @Override
    public Optional<Picture> picture(Readout readout, SensorBudget row, Optional<String> selected) {
        var chart = SensorCharts.of(readout.harness(), row);
        return Optional.of(new Picture(
                WORDS.get("sensor.its-error-budget", chart.title()),
                (fonts, widthMm, heightMm) -> chart.scene(fonts, widthMm)));
    }

    @Override
    public List<String> steps(Readout readout, SensorBudget row) {
        List<String> steps = new ArrayList<>();
        steps.add(WORDS.get(
                "sensor.at-in-largest-error",
                row.sensor(),
                value(row, row.reading()),
                readout.stateName(row.state()),
                value(row, row.worstError()),
                value(row, row.allowed()),
                row.allowedFrom()));
        row.known().forEach(part -> steps.add(part(row, part)));
        row.tolerances().forEach(part -> steps.add("± " + part(row, part)));
        row.ripple().ifPresent(ripple -> steps.add(WORDS.get("sensor.ripple-after-the-filter", value(row, ripple))));
        if (row.ripple().isEmpty()) {
            steps.add(WORDS.get("sensor.ripple-not-judged-the"));
        }
        steps.addAll(open(readout));
        return steps;
    }

    private static List<String> open(Readout readout) {
        return ReturnRows.study(readout).unjudged().stream()
                .filter(each -> each.study() == Unjudged.Study.SENSORS)
                .map(each -> Words.said(each.told()))
                .toList();
    }

    private static String part(SensorBudget row, SensorBudget.ErrorPart part) {
        return Words.said(part.named()) + " " + value(row, part.error()) + ": " + Words.said(part.worked())
                + (part.source().isEmpty() ? "" : " (" + part.source() + ")");
    }

    private static String value(SensorBudget row, double value) {
        return Formats.number(value) + " " + row.quantityUnit();
    }
}
