package org.ohmloom.model;

import static org.ohmloom.units.Require.finite;
import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.OptionalDouble;

/**
 * What an input can tell apart. What is left out is not known and asks nothing.
 *
 * @param lowestVolts  lowest voltage above the unit's sensor return it tells, V
 * @param highestVolts highest voltage it tells, V, more than {@code lowestVolts}
 * @param lowestHertz  lowest frequency it tells, Hz, 0 or more
 * @param highestHertz highest frequency it tells, Hz, more than 0
 */
public record InputRange(
        OptionalDouble lowestVolts,
        OptionalDouble highestVolts,
        OptionalDouble lowestHertz,
        OptionalDouble highestHertz) {

    public InputRange {
        lowestVolts.ifPresent(value -> finite(value, "lowest voltage of an input"));
        highestVolts.ifPresent(value -> finite(value, "highest voltage of an input"));
        lowestHertz.ifPresent(value -> notNegative(value, "lowest frequency of an input"));
        highestHertz.ifPresent(value -> positive(value, "highest frequency of an input"));
        rising(lowestVolts, highestVolts, "V");
        rising(lowestHertz, highestHertz, "Hz");
    }

    /** A range of voltage. */
    public static InputRange ofVolts(double lowest, double highest) {
        return new InputRange(
                OptionalDouble.of(lowest), OptionalDouble.of(highest), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** A limit of frequency. */
    public static InputRange upToHertz(double highest) {
        return new InputRange(
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(highest));
    }

    private static void rising(OptionalDouble lowest, OptionalDouble highest, String unit) {
        if (lowest.isPresent() && highest.isPresent()) {
            that(
                    lowest.getAsDouble() < highest.getAsDouble(),
                    "the highest value an input tells is above %s %s, not %s %s",
                    lowest.getAsDouble(),
                    unit,
                    highest.getAsDouble(),
                    unit);
        }
    }
}
