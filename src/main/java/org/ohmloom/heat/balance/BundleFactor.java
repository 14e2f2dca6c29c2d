package org.ohmloom.heat.balance;

import java.util.ArrayList;
import java.util.List;

/** What a wire may carry in a bundle of wires like itself, as a share of what it may carry alone in free air. */
public final class BundleFactor {

    private static final int MOST_STEPS = 60;
    private static final double TOLERANCE = 1e-6;

    private BundleFactor() {}

    /**
     * The factor, up to 1.
     *
     * @param wire               the wire
     * @param air                the air
     * @param limitCelsius       conductor temperature to be kept, deg C, above ambient
     * @param count              wires in the bundle, all of that kind, 1 or more
     * @param capacityFraction   percent of total capacity used, as a share: so many of the wires carry the same full current,
     *                           one at least, the others none
     */
    public static double of(RoundWire wire, OpenAir air, double limitCelsius, int count, double capacityFraction) {
        double alone = HeatBalance.bare(wire, air).ampacityAmps(limitCelsius);
        if (count <= 1 || alone == 0) {
            return 1;
        }
        double loaded = Math.max(1, capacityFraction * count);
        double low = 0;
        double high = 1;
        for (int step = 0; step < MOST_STEPS && high - low > TOLERANCE; step++) {
            double middle = (low + high) / 2;
            if (hottest(wire, air, count, loaded, middle * alone) <= limitCelsius) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low == 0 ? 0 : high;
    }

    /** Temperature of the hottest wire when so many wires, a part of one perhaps, carry a current, A. */
    private static double hottest(RoundWire wire, OpenAir air, int count, double loaded, double amps) {
        List<Bundled> wires = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double part = Math.max(0, Math.min(1, loaded - i));
            wires.add(new Bundled(wire, amps * Math.sqrt(part)));
        }
        return new BundleSection(wires, Cover.NONE, air)
                .settle().stream().mapToDouble(SteadyState::celsius).max().orElseThrow();
    }
}
