package org.ohmloom.analysis.start;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.OptionalDouble;

/**
 * What feeds a first harness.
 *
 * @param nominalVolts   12, 24 or 48 V
 * @param ampHours       capacity of the battery, Ah, more than 0
 * @param place          name of the place where battery and alternator sit
 * @param alternatorAmps most current of the alternator, A, more than 0; empty without one
 */
public record StartSupply(double nominalVolts, double ampHours, String place, OptionalDouble alternatorAmps) {

    public StartSupply {
        that(
                nominalVolts == 12 || nominalVolts == 24 || nominalVolts == 48,
                "the supply is 12, 24 or 48 V, not %s V",
                nominalVolts);
        positive(ampHours, "capacity of the battery");
        notBlank(place, "place of the battery");
        alternatorAmps.ifPresent(value -> positive(value, "current of the alternator"));
    }

    /** How many 12 V blocks the supply is. */
    double blocks() {
        return nominalVolts / 12;
    }
}
