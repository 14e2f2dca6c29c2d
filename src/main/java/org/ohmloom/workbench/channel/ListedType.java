package org.ohmloom.workbench.channel;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Device;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Load;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.NearestText;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Sensor;
import org.ohmloom.workbench.words.Words;

/**
 * Types of sensors and actuators as they are listed. Their figures are round and of no particular part: they stand where a person
 * has not entered others.
 */
enum ListedType {
    PRESSURE(Sensor.Kind.RATIOMETRIC, 0.01, "bar", 0, 10, share()),
    POSITION(Sensor.Kind.RATIOMETRIC, 0.01, "%", 0, 100, share()),
    LEVEL(Sensor.Kind.RATIOMETRIC, 0.01, "%", 0, 100, share()),
    NTC(Sensor.Kind.THERMISTOR, 0, "°C", -40, 150, new Calibration.Beta(2500, 20, 3500)),
    RTD(Sensor.Kind.RESISTANCE_THERMOMETER, 0, "°C", 0, 200, ohms(0, 1000, 200, 1750)),
    THERMOCOUPLE(
            Sensor.Kind.THERMOCOUPLE,
            0.005,
            "°C",
            0,
            900,
            new Calibration.AmplifiedThermocouple(Calibration.Thermocouple.Type.K, 100, 0.25, OptionalDouble.empty())),
    HALL_SPEED(Sensor.Kind.HALL, 0.01, "1/min", 0, 6000, pulses()),
    VR_SPEED(Sensor.Kind.VARIABLE_RELUCTANCE, 0, "1/min", 200, 6000, pulses()),
    FLOW(Sensor.Kind.HALL, 0.01, "l/min", 0, 30, pulses()),
    FUEL_SENDER(Sensor.Kind.SENDER, 0, "%", 0, 100, ohms(0, 10, 100, 180)),
    SWITCH(Sensor.Kind.SWITCH, 0, "closed", 0, 1, new Calibration.SwitchContact(0.1, OptionalDouble.empty())),
    EXHAUST_OXYGEN(
            Sensor.Kind.EXHAUST_OXYGEN,
            0,
            "lambda",
            0.7,
            1.3,
            new Calibration.VoltageLine(0, 5, OptionalDouble.empty())),
    RELAY(0.15),
    SOLENOID(1),
    FAN(10),
    PUMP(8),
    LAMP(5);

    /** Motors start at so many times their current, and an on-off coil has so much inductance, H: round figures. */
    private static final double START_RATIO = 4, COIL_HENRIES = 0.05;

    /** Share of its voltage a relay pulls in and drops out at, its contact's resistance, ohm, and limit, A: round figures. */
    private static final double PULL_IN_SHARE = 0.6, DROP_OUT_SHARE = 0.2, CONTACT_OHMS = 0.005, CONTACT_AMPS = 30;

    private final Optional<Sensor> sensor;
    private final Optional<Measurement> measurement;
    private final double usualAmps;

    ListedType(Sensor.Kind kind, double drawAmps, String unit, double lowest, double highest, Calibration calibration) {
        this.sensor = Optional.of(new Sensor(kind, drawAmps, OptionalDouble.empty()));
        this.measurement = Optional.of(Measurement.of("value", unit, lowest, highest, calibration));
        this.usualAmps = drawAmps;
    }

    ListedType(double usualAmps) {
        this.sensor = Optional.empty();
        this.measurement = Optional.empty();
        this.usualAmps = usualAmps;
    }

    private static Calibration share() {
        return new Calibration.RatiometricLine(0.1, 0.9, OptionalDouble.empty());
    }

    private static Calibration pulses() {
        return new Calibration.PulseLevels(0.3, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static Calibration ohms(double low, double lowOhms, double high, double highOhms) {
        return new Calibration.ResistanceTable(List.of(
                new Calibration.ResistancePoint(low, lowOhms), new Calibration.ResistancePoint(high, highOhms)));
    }

    /** What people call it. */
    String shown() {
        return Words.of("channels")
                .get("type." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** All of them as people call them. */
    static List<String> allShown() {
        return Arrays.stream(values()).map(ListedType::shown).toList();
    }

    /**
     * The type a person names.
     *
     * @throws IllegalArgumentException when there is none; one sentence says which are near
     */
    static ListedType named(String typed) {
        return Arrays.stream(values())
                .filter(type -> type.shown().equalsIgnoreCase(typed.strip()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(Words.of("channels")
                        .get("list.no-type", typed.strip(), NearestText.question(typed, allShown()))));
    }

    boolean isSensor() {
        return sensor.isPresent();
    }

    /** Letters its identity begins with. */
    String letters() {
        return switch (this) {
            case RELAY -> "K";
            case SOLENOID -> "Y";
            case FAN, PUMP -> "M";
            case LAMP -> "E";
            default -> "B";
        };
    }

    /** What it measures where a person has not said so. */
    Optional<Measurement> usual() {
        return measurement;
    }

    /**
     * The device.
     *
     * @param volts   nominal supply, V
     * @param amps    its current, A; empty for the usual one
     * @param changed what it measures, for a sensor
     */
    Device device(double volts, OptionalDouble amps, Optional<Measurement> changed) {
        double current = amps.orElse(usualAmps);
        if (sensor.isPresent()) {
            return new Sensor(sensor.get().kind(), current, OptionalDouble.empty(), changed);
        }
        return switch (this) {
            case RELAY -> new Relay(
                    volts / current,
                    PULL_IN_SHARE * volts,
                    DROP_OUT_SHARE * volts,
                    CONTACT_OHMS,
                    CONTACT_AMPS,
                    false,
                    OptionalDouble.empty());
            case SOLENOID -> Load.of(new Draw.Inductive(current, volts, COIL_HENRIES));
            case LAMP -> Load.of(new Draw.Lamp(current * volts, volts));
            default -> Load.of(new Draw.Motor(current, START_RATIO * current, volts));
        };
    }
}
