package org.ohmloom.solve;

import java.util.Arrays;

/**
 * Which draws can be met at all. What is not fed draws nothing; without this a lamp behind an open switch would make the
 * whole island unsolvable.
 */
final class Feeding {

    private Feeding() {}

    /**
     * Puts present currents to rest whose two ends no conductor, lamp, diode or source joins: nothing could bring them
     * their current.
     */
    static Characteristic[] withoutUnfed(Circuit circuit, Characteristic[] laws) {
        Characteristic[] fed = laws.clone();
        if (Arrays.stream(laws).noneMatch(ForcedCurrent.class::isInstance)) {
            return fed;
        }
        Joining joining = new Joining(circuit.points().size() + 1);
        for (int branch = 0; branch < laws.length; branch++) {
            if (brings(laws[branch])) {
                joining.join(circuit.mesh().from()[branch] + 1, circuit.mesh().to()[branch] + 1);
            }
        }
        for (int branch = 0; branch < laws.length; branch++) {
            int from = circuit.mesh().from()[branch] + 1;
            int to = circuit.mesh().to()[branch] + 1;
            if (laws[branch] instanceof ForcedCurrent && joining.root(from) != joining.root(to)) {
                fed[branch] = Asleep.ASLEEP;
            }
        }
        return fed;
    }

    private static boolean brings(Characteristic law) {
        return law instanceof Ohmic || law instanceof Lamp || law instanceof Rectifier || law instanceof LimitedSource;
    }

    /** Wakes the loads that hold their power where there is voltage enough, with their floor; puts the others to rest. */
    static Characteristic[] awake(Circuit circuit, Characteristic[] laws, PreciseRow openVolts) {
        Characteristic[] awake = laws.clone();
        for (int branch = 0; branch < laws.length; branch++) {
            if (laws[branch] instanceof DrawnPower power) {
                double along = circuit.along(branch, openVolts).value();
                awake[branch] = along >= DrawnPower.WAKE_VOLTS ? power.below(along) : Asleep.ASLEEP;
            }
        }
        return awake;
    }
}
