package org.ohmloom.model;

import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.List;

/**
 * A DC-DC converter: takes at its input the power its output gives, divided by the efficiency.
 * Terminals {@code in+}, {@code in-}, {@code out+}, {@code out-}. With a common return the two negative terminals are
 * joined inside; isolated ones are not.
 *
 * @param outputVolts        regulated output voltage, V, more than 0
 * @param outputOhms         fall of output voltage per ampere, ohm, 0 or more
 * @param limitAmps          most output current, A, more than 0
 * @param efficiencyFraction output power over input power, more than 0, at most 1
 * @param isolated           whether output and input share no conductor
 */
public record Converter(
        double outputVolts, double outputOhms, double limitAmps, double efficiencyFraction, boolean isolated)
        implements Device {

    /** Terminal names. */
    public static final String IN_POSITIVE = "in+", IN_NEGATIVE = "in-", OUT_POSITIVE = "out+", OUT_NEGATIVE = "out-";

    public Converter {
        positive(outputVolts, "converter output voltage");
        notNegative(outputOhms, "converter output resistance");
        positive(limitAmps, "converter current limit");
        that(
                efficiencyFraction > 0 && efficiencyFraction <= 1,
                "converter efficiency must be more than 0 and at most 1, was %s",
                efficiencyFraction);
    }

    @Override
    public List<String> terminals() {
        return List.of(IN_POSITIVE, IN_NEGATIVE, OUT_POSITIVE, OUT_NEGATIVE);
    }
}
