package org.ohmloom.pack;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.study.CalibrationCharts;
import org.ohmloom.model.Measurement;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.Row;
import org.ohmloom.signal.calibration.CalibrationCurve;
import org.ohmloom.signal.calibration.CurvePoint;
import org.ohmloom.signal.calibration.SensorCalibration;
import org.ohmloom.signal.study.ChannelReading;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;

/** The calibration of each channel: its curve, how it is worked out, how finely it is told, and its points as a table. */
final class CalibrationSheet {

    private static final String REMARK =
            "Values without lead resistance, offsets and load of the input: see the sensor errors"
                    + " of the calculation.";

    private static final double CURVE_WIDTH_MM = 120;
    private static final double CURVE_HEIGHT_MM = 42;

    private static final List<Column> POINTS = List.of(
            Column.code("Sensor").inFileOnly(),
            Column.code("Read by").inFileOnly(),
            Column.count("Value", 3),
            Column.code("Unit"),
            Column.count("Gives", 4),
            Column.code("Unit given"),
            Column.number("Pin", Unit.VOLT, 4));

    private static final List<Column> BY_VOLTAGE = List.of(
            Column.code("Sensor").inFileOnly(),
            Column.code("Read by").inFileOnly(),
            Column.number("Pin", Unit.VOLT, 4),
            Column.count("Stands for", 3),
            Column.code("In"));

    private final Analysis analysis;
    private final SceneFonts fonts;

    CalibrationSheet(Analysis analysis, SceneFonts fonts) {
        this.analysis = analysis;
        this.fonts = fonts;
    }

    Report report() {
        List<Block> blocks = new ArrayList<>(FirstPage.blocks(analysis.harness()));
        int before = blocks.size();
        for (ChannelReading reading : analysis.evidence().signals().channels()) {
            reading.calibration()
                    .filter(each -> each.curve().isPresent())
                    .ifPresent(each -> blocks.add(new Block.Kept(blocks(reading, each))));
        }
        if (blocks.size() == before) {
            blocks.add(new Block.Prose("No channel has a calibration."));
        }
        return new Report(blocks, REMARK);
    }

    private List<Block> blocks(ChannelReading reading, SensorCalibration calibration) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(
                reading.channel().name() + ", " + reading.channel().component().id() + " at "
                        + reading.channel().at()));
        List<Block.Fact> facts = facts(reading, calibration);
        List<Block.Table> tables = tables(reading, calibration);
        CalibrationCharts.of(calibration)
                .ifPresentOrElse(
                        chart -> blocks.add(new Block.Beside(
                                chart.unheaded(fonts, CURVE_WIDTH_MM, CURVE_HEIGHT_MM), facts, tables)),
                        () -> {
                            blocks.add(new Block.Facts(facts));
                            blocks.addAll(tables);
                        });
        return blocks;
    }

    private static List<Block.Table> tables(ChannelReading reading, SensorCalibration calibration) {
        List<Block.Table> tables = new ArrayList<>();
        tables.add(new Block.Table(
                "points",
                POINTS,
                calibration.points().stream()
                        .map(point -> row(reading, calibration, point))
                        .toList(),
                ""));
        List<CurvePoint> byVoltage = calibration.byVoltage();
        if (!byVoltage.isEmpty()) {
            tables.add(new Block.Table(
                    "values-by-voltage",
                    BY_VOLTAGE,
                    byVoltage.stream().map(point -> typed(reading, point)).toList(),
                    ""));
        }
        return tables;
    }

    private static List<Block.Fact> facts(ChannelReading reading, SensorCalibration calibration) {
        CalibrationCurve curve = calibration.curve().orElseThrow();
        Measurement measurement = reading.channel().measurement().orElseThrow();
        List<Block.Fact> facts = new ArrayList<>();
        facts.add(new Block.Fact(
                "In use",
                Formats.number(calibration.lowest()) + " to " + Formats.number(calibration.highest()) + " "
                        + measurement.unit()));
        facts.add(new Block.Fact("Gives", curve.kind().words()));
        facts.add(new Block.Fact("Curve", curve.formula().english()));
        facts.add(new Block.Fact("Source", curve.source().english()));
        calibration
                .resolution()
                .ifPresent(step -> facts.add(new Block.Fact(
                        "Step",
                        Formats.number(step.coarsest()) + " " + measurement.unit() + " at "
                                + Formats.number(step.coarsestAt()) + "; at the ends " + Formats.number(step.atLowest())
                                + " and " + Formats.number(step.atHighest()) + ": "
                                + step.formula().english())));
        reading.rate().hertz().ifPresent(hertz -> facts.add(new Block.Fact("Sent", Formats.hertz(hertz))));
        reading.rate()
                .timeConstantSeconds()
                .ifPresent(seconds -> facts.add(new Block.Fact(
                        "Time constant",
                        Formats.seconds(seconds) + ", " + reading.rate().timeConstantSource())));
        calibration
                .problems()
                .forEach(problem ->
                        facts.add(new Block.Fact("Mind", problem.words().english())));
        return facts;
    }

    /** A value to the thousandth, without zeros at its end: the voltage beside it belongs to that value and no rounder one. */
    private static String exactly(double value) {
        return BigDecimal.valueOf(value)
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static Row typed(ChannelReading reading, CurvePoint point) {
        return Row.of(
                Cell.text(reading.channel().component().id().value()),
                Cell.text(reading.channel().at()),
                Cell.number(point.pinVolts()),
                Cell.number(point.value()),
                Cell.text(reading.channel().measurement().map(Measurement::unit)));
    }

    private static Row row(ChannelReading reading, SensorCalibration calibration, CurvePoint point) {
        Optional<Measurement> measurement = reading.channel().measurement();
        return Row.of(
                Cell.text(reading.channel().component().id().value()),
                Cell.text(reading.channel().at()),
                Cell.number(point.value(), exactly(point.value())),
                Cell.text(measurement.map(Measurement::unit)),
                Cell.number(point.signal(), Formats.number(point.signal())),
                Cell.text(calibration
                        .curve()
                        .orElseThrow()
                        .kind()
                        .dimension()
                        .canonicalUnit()
                        .symbol()),
                Cell.number(point.pinVolts()));
    }
}
