package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Measurement;
import org.ohmloom.signal.calibration.Resolution;
import org.ohmloom.signal.calibration.SensorCalibration;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.words.Words;

/** What is told of a calibration: its formula, what voltages at the pin stand for, the step of the converter, and what is wrong. */
final class CalibrationTold {

    private final Words words;
    private final SensorCalibration calibration;
    private final String unit;

    CalibrationTold(Words words, SensorCalibration calibration) {
        this.words = words;
        this.calibration = calibration;
        this.unit = calibration.channel().measurement().map(Measurement::unit).orElse("");
    }

    /** Formula, inverse and resolution, a sentence each. */
    List<String> figures() {
        List<String> lines = new ArrayList<>();
        calibration
                .curve()
                .ifPresent(curve -> lines.add(words.get("calibration.curve", curve.formula(), curve.source())));
        inverse().ifPresent(lines::add);
        calibration.resolution().ifPresent(step -> lines.add(resolution(step)));
        return lines;
    }

    /** What is wrong, a sentence each. */
    List<String> problems() {
        return calibration.problems().stream()
                .map(problem -> Words.said(problem.words()))
                .map(problem -> words.get(
                        "calibration.problem", calibration.channel().component().id(), problem))
                .toList();
    }

    /** What some voltages at the pin stand for, evenly apart. */
    private Optional<String> inverse() {
        List<String> parts = new ArrayList<>();
        calibration.byVoltage().forEach(point -> point.pinVolts()
                .ifPresent(
                        volts -> parts.add(Formats.volts(volts) + " = " + Formats.number(point.value()) + " " + unit)));
        return parts.isEmpty()
                ? Optional.empty()
                : Optional.of(words.get("calibration.inverse", String.join(", ", parts)));
    }

    private String resolution(Resolution step) {
        return words.get(
                "calibration.resolution",
                Formats.number(step.coarsest()) + " " + unit,
                Formats.number(step.coarsestAt()) + " " + unit,
                step.formula());
    }
}
