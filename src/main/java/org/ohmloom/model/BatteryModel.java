package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.within;

import java.util.OptionalDouble;

/**
 * How a battery changes with charge level, temperature and time.
 *
 * @param type             battery type of the tables, for example {@code lead-acid-agm}
 * @param ratedHours       hours of the steady discharge its capacity was measured by, h, more than 0; 20 is usual
 * @param peukertExponent  exponent of steady discharge, 1 to 2; empty takes the type's usual one
 * @param acceptanceAmps   most charge current it accepts, A, more than 0; empty takes the type's usual share of its capacity
 * @param chargeOhms       resistance against charging, ohm, more than 0; empty takes the type's usual one
 */
public record BatteryModel(
        String type,
        double ratedHours,
        OptionalDouble peukertExponent,
        OptionalDouble acceptanceAmps,
        OptionalDouble chargeOhms) {

    /** The discharge time capacities are usually given for, h. */
    public static final double USUAL_RATED_HOURS = 20;

    public BatteryModel {
        notBlank(type, "battery type");
        positive(ratedHours, "discharge time of the rated capacity");
        peukertExponent.ifPresent(value -> within(value, 1, 2, "Peukert exponent"));
        acceptanceAmps.ifPresent(value -> positive(value, "charge acceptance"));
        chargeOhms.ifPresent(value -> positive(value, "charge resistance"));
    }

    /** A battery of a type, everything else as is usual for it. */
    public static BatteryModel of(String type) {
        return new BatteryModel(
                type, USUAL_RATED_HOURS, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }
}
