package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.graph.BranchKind;

/**
 * Finds for each load of an island the moment by which its voltage drop is judged: of those in which it is on, the one with the
 * least voltage left for it. It is on while it sees more than half the largest voltage it ever sees.
 */
final class LoadMoments {

    private static final double ON_RATIO = 0.5;

    /** A load that never sees more is never on, V. */
    private static final double NOTHING_VOLTS = 1e-9;

    private final Circuit circuit;
    private final List<Integer> loads = new ArrayList<>();
    private final double[][] volts;

    LoadMoments(Circuit circuit, int moments) {
        this.circuit = circuit;
        for (int branch = 0; branch < circuit.branches().size(); branch++) {
            if (circuit.branches().get(branch).kind() == BranchKind.LOAD) {
                loads.add(branch);
            }
        }
        volts = new double[loads.size()][moments];
    }

    /** Takes down a moment. */
    void add(int number, IslandMoment moment) {
        for (int load = 0; load < volts.length; load++) {
            volts[load][number] = circuit.along(loads.get(load), moment.volts()).value();
        }
    }

    /** Numbers of the branches that are loads. */
    List<Integer> loads() {
        return loads;
    }

    /**
     * The moment of a load.
     *
     * @param load  place in {@link #loads()}
     * @param turns 1, or -1 when its current runs against its branch
     */
    int worst(int load, double turns) {
        double most = 0;
        for (double each : volts[load]) {
            most = Math.max(most, turns * each);
        }
        if (most <= NOTHING_VOLTS) {
            return 0;
        }
        int worst = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int moment = 0; moment < volts[load].length; moment++) {
            double each = turns * volts[load][moment];
            if (each >= ON_RATIO * most && each < least) {
                worst = moment;
                least = each;
            }
        }
        return worst;
    }
}
