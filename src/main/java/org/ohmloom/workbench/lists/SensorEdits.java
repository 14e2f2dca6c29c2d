package org.ohmloom.workbench.lists;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.ohmloom.edit.ChangeDevice;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Component;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Sensor;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.CalibrationText;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.TypedRange;
import org.ohmloom.workbench.words.Words;

/** What is typed about what sensors measure, as edits. A calibration begins a measurement; the rest changes one. */
final class SensorEdits {
    private static final Words WORDS = Words.of("lists");

    private SensorEdits() {}

    /** "0 to 10 bar". */
    static String range(Measurement measurement) {
        return WORDS.get(
                "sensor.to",
                Formats.number(measurement.lowest()),
                Formats.number(measurement.highest()),
                measurement.unit());
    }

    /** What a sensor gives; nothing takes away all that is known about what it measures. */
    static Edit calibration(List<Component> sensors, String typed) {
        return all(sensors, WORDS.get("sensor.calibration"), component -> {
            Optional<Measurement> before = ((Sensor) component.device()).measurement();
            if (typed.isBlank()) {
                return Optional.empty();
            }
            Calibration calibration = CalibrationText.parse(typed, before.map(Measurement::calibration));
            boolean isTemperature = calibration instanceof Calibration.Beta
                    || calibration instanceof Calibration.SteinhartHart
                    || calibration instanceof Calibration.Thermocouple
                    || calibration instanceof Calibration.AmplifiedThermocouple;
            return Optional.of(before.map(was -> new Measurement(
                            was.quantity(),
                            isTemperature ? "°C" : was.unit(),
                            was.lowest(),
                            was.highest(),
                            calibration,
                            was.allowedError(),
                            was.tolerances(),
                            was.dissipationWattsPerKelvin(),
                            was.use()))
                    .orElseGet(
                            () -> Measurement.of(component.name(), isTemperature ? "°C" : "%", 0, 100, calibration)));
        });
    }

    /** What is measured. */
    static Edit quantity(List<Component> sensors, String typed) {
        return known(
                sensors,
                WORDS.get("sensor.quantity"),
                was -> new Measurement(
                        typed.strip(),
                        was.unit(),
                        was.lowest(),
                        was.highest(),
                        was.calibration(),
                        was.allowedError(),
                        was.tolerances(),
                        was.dissipationWattsPerKelvin(),
                        was.use()));
    }

    /** The range used and its unit, "0 to 10 bar"; without a unit it stays as it was. */
    static Edit range(List<Component> sensors, String typed) {
        TypedRange range = TypedRange.parse(typed);
        return known(
                sensors,
                WORDS.get("sensor.range-2"),
                was -> new Measurement(
                        was.quantity(),
                        range.unit().orElse(was.unit()),
                        range.lowest(),
                        range.highest(),
                        was.calibration(),
                        was.allowedError(),
                        was.tolerances(),
                        was.dissipationWattsPerKelvin(),
                        was.use()));
    }

    /** Most error in the sensor's unit; nothing leaves it to the rules. */
    static Edit allowed(List<Component> sensors, String typed) {
        OptionalDouble error = TypedNumbers.optional(typed, Unit.FRACTION);
        return known(sensors, WORDS.get("sensor.allowed-error"), was -> was.allowing(error));
    }

    /** Power that warms the sensor by 1 K; nothing when not known. */
    static Edit dissipation(List<Component> sensors, String typed) {
        OptionalDouble watts = TypedNumbers.optional(typed.replaceFirst("\\s*/\\s*K\\s*$", ""), Unit.WATT);
        return known(sensors, WORDS.get("sensor.dissipation-constant"), was -> was.dissipating(watts));
    }

    private static Edit known(List<Component> sensors, String what, Function<Measurement, Measurement> change) {
        return all(
                sensors,
                what,
                component -> Optional.of(change.apply(((Sensor) component.device())
                        .measurement()
                        .orElseThrow(() -> new IllegalArgumentException(
                                WORDS.get("sensor.say-first-what-gives", component.id(), CalibrationText.FORMS))))));
    }

    private static Edit all(List<Component> sensors, String what, Function<Component, Optional<Measurement>> change) {
        List<Edit> edits = sensors.stream()
                .map(component -> {
                    Optional<Measurement> changed = change.apply(component);
                    return (Edit) new ChangeDevice(
                            WORDS.text("sensor.set-of", what, component.id()),
                            component.id(),
                            device -> device instanceof Sensor now ? now.measuring(changed) : device);
                })
                .toList();
        return TypedNumbers.together(WORDS.text("sensor.set-of-sensors", what, sensors.size()), edits);
    }
}
