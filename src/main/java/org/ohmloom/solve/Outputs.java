package org.ohmloom.solve;

import java.util.Map;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;

/** What the outputs of converters and reference supplies give in one moment, by which their inputs draw. */
final class Outputs {

    /** Relative change below which two rounds agree. */
    private static final double AGREE_RATIO = 1e-13;

    /** Difference in W or A that counts as none. */
    private static final double AGREE_FLOOR = 1e-14;

    private final Map<BranchId, Given> given = new TreeMap<>();

    /**
     * What one output gives.
     *
     * @param watts power, W, 0 or more
     * @param amps  current, A, 0 or more
     */
    record Given(double watts, double amps) {

        static final Given NOTHING = new Given(0, 0);

        boolean agreesWith(Given other) {
            return near(watts, other.watts) && near(amps, other.amps);
        }

        private static boolean near(double a, double b) {
            return Math.abs(a - b) <= AGREE_RATIO * Math.max(Math.abs(a), Math.abs(b)) + AGREE_FLOOR;
        }
    }

    /** What an output gives; nothing while it is off or not known. */
    Given of(BranchId output) {
        return given.getOrDefault(output, Given.NOTHING);
    }

    /** Takes down what an output gives. */
    void put(BranchId output, double watts, double amps) {
        given.put(output, new Given(Math.max(0, watts), Math.max(0, amps)));
    }
}
