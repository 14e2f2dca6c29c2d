package org.ohmloom.model;

import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A sensor with terminals {@code supply}, {@code signal}, {@code return}; a two-wire sensor leaves {@code supply}
 * unused and is the resistance {@code signalOhms} between signal and return.
 *
 * @param kind       what it senses with
 * @param drawAmps   current it takes from supply to return, A, 0 or more; 0 for a two-wire sensor
 * @param signalOhms resistance between signal and return, ohm, more than 0, if it conducts there
 * @param measurement what it measures and gives, if known
 */
public record Sensor(Kind kind, double drawAmps, OptionalDouble signalOhms, Optional<Measurement> measurement)
        implements Device {

    /** Kinds of sensor by how they work. */
    public enum Kind {
        RATIOMETRIC,
        THERMISTOR,
        RESISTANCE_THERMOMETER,
        THERMOCOUPLE,
        HALL,
        VARIABLE_RELUCTANCE,
        SENDER,
        SWITCH,
        EXHAUST_OXYGEN,
        OTHER
    }

    /** Terminal names. */
    public static final String SUPPLY = "supply", SIGNAL = "signal", RETURN = "return";

    public Sensor {
        notNegative(drawAmps, "supply current of a sensor");
        signalOhms.ifPresent(value -> positive(value, "signal resistance of a sensor"));
    }

    /** A sensor of which nothing is known about what it measures. */
    public Sensor(Kind kind, double drawAmps, OptionalDouble signalOhms) {
        this(kind, drawAmps, signalOhms, Optional.empty());
    }

    /** This sensor with another measurement. */
    public Sensor measuring(Optional<Measurement> changed) {
        return new Sensor(kind, drawAmps, signalOhms, changed);
    }

    @Override
    public List<String> terminals() {
        return List.of(SUPPLY, SIGNAL, RETURN);
    }
}
