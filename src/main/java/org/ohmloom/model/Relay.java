package org.ohmloom.model;

import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A relay or contactor whose contacts follow the solved voltage of its coil. Terminals by DIN 72552: coil {@code 85}
 * and {@code 86}, common contact {@code 30}, make contact {@code 87}, and {@code 87a} on a change-over relay.
 *
 * @param coilOhms     coil resistance, ohm, more than 0
 * @param pullInVolts  coil voltage at which it closes, V, more than 0
 * @param dropOutVolts coil voltage below which it opens, V, more than 0 and at most the pull-in voltage
 * @param contactOhms  resistance of a closed contact, ohm, more than 0
 * @param limitAmps    most continuous contact current, A, more than 0
 * @param changeOver   whether there is a break contact {@code 87a}
 * @param ratedVolts   highest system voltage its contacts are made for, V, more than 0, if known
 */
public record Relay(
        double coilOhms,
        double pullInVolts,
        double dropOutVolts,
        double contactOhms,
        double limitAmps,
        boolean changeOver,
        OptionalDouble ratedVolts)
        implements Device {

    /** Terminal names of DIN 72552. */
    public static final String COIL_A = "85", COIL_B = "86", COMMON = "30", MAKE = "87", BREAK = "87a";

    public Relay {
        positive(coilOhms, "coil resistance");
        positive(pullInVolts, "pull-in voltage");
        positive(dropOutVolts, "drop-out voltage");
        that(
                dropOutVolts <= pullInVolts,
                "drop-out voltage %s V must not exceed the pull-in voltage %s V",
                dropOutVolts,
                pullInVolts);
        positive(contactOhms, "contact resistance of a relay");
        positive(limitAmps, "current limit of a relay");
        ratedVolts.ifPresent(value -> positive(value, "voltage rating of a relay"));
    }

    /** A relay whose voltage rating is not known. */
    public Relay(
            double coilOhms,
            double pullInVolts,
            double dropOutVolts,
            double contactOhms,
            double limitAmps,
            boolean changeOver) {
        this(coilOhms, pullInVolts, dropOutVolts, contactOhms, limitAmps, changeOver, OptionalDouble.empty());
    }

    @Override
    public List<String> terminals() {
        return changeOver ? List.of(COIL_A, COIL_B, COMMON, MAKE, BREAK) : List.of(COIL_A, COIL_B, COMMON, MAKE);
    }
}
