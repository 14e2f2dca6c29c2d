package org.ohmloom.model;

import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.within;

import java.util.OptionalDouble;

/**
 * How an operating state finds a source.
 *
 * @param on             whether it is connected and runs
 * @param chargeFraction charge level of a battery, 0 to 1; empty means full
 * @param celsius        temperature of the source, deg C; empty means the ambient of its zone, for a
 *                       battery of a model -18 while the engine cranks
 * @param speedRpm       speed of an alternator's shaft, revolutions per minute, 0 or more; empty means unknown
 * @param limitAmps      most current it gives in this state, A, more than 0; empty means by its own data
 */
public record SourceSetting(
        boolean on,
        OptionalDouble chargeFraction,
        OptionalDouble celsius,
        OptionalDouble speedRpm,
        OptionalDouble limitAmps) {

    /** On, nothing else said. */
    public static final SourceSetting ON = plain(true);

    /** Off. */
    public static final SourceSetting OFF = plain(false);

    public SourceSetting {
        chargeFraction.ifPresent(value -> within(value, 0, 1, "charge level"));
        celsius.ifPresent(value -> within(value, -60, 400, "temperature of a source"));
        speedRpm.ifPresent(value -> notNegative(value, "speed of an alternator"));
        limitAmps.ifPresent(value -> positive(value, "current limit of a source"));
    }

    /** On or off, nothing else said. */
    public static SourceSetting of(boolean on) {
        return on ? ON : OFF;
    }

    /** This setting at another charge level, 0 to 1. */
    public SourceSetting withChargeFraction(double changed) {
        return new SourceSetting(on, OptionalDouble.of(changed), celsius, speedRpm, limitAmps);
    }

    /** This setting at another temperature, deg C. */
    public SourceSetting withCelsius(double changed) {
        return new SourceSetting(on, chargeFraction, OptionalDouble.of(changed), speedRpm, limitAmps);
    }

    private static SourceSetting plain(boolean on) {
        return new SourceSetting(
                on, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }
}
