package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.PointId;

/**
 * Takes down, moment by moment, the voltages of one island's watched points, and of all branches the mean current over
 * each stretch of each clock.
 */
final class MomentRecorder {

    private final Circuit circuit;
    private final List<Clock> clocks;
    private final Map<PointId, float[]> volts = new HashMap<>();
    private final double[] sums;
    private final double[][][] clockSums;
    private final double[][] clockShares;
    private double shares;

    /**
     * Prepares for an island.
     *
     * @param circuit the island
     * @param watched the points of interest
     * @param clocks  the clocks
     * @param moments how many moments there will be
     */
    MomentRecorder(Circuit circuit, Iterable<PointId> watched, List<Clock> clocks, int moments) {
        this.circuit = circuit;
        this.clocks = clocks;
        int branches = circuit.branches().size();
        sums = new double[branches];
        clockSums = new double[clocks.size()][][];
        clockShares = new double[clocks.size()][];
        for (int clock = 0; clock < clockSums.length; clock++) {
            int stretches = clocks.get(clock).stretches().size();
            clockSums[clock] = new double[stretches][branches];
            clockShares[clock] = new double[stretches];
        }
        if (clocks.isEmpty()) {
            return;
        }
        for (PointId point : watched) {
            if (circuit.holds(point)) {
                volts.put(point, new float[moments]);
            }
        }
    }

    /** Takes down a moment that stands for a share of time. */
    void add(int number, List<Part> at, double share, IslandMoment moment) {
        volts.forEach((point, values) -> {
            int place = circuit.number(point);
            values[number] = place < 0 ? 0 : (float) moment.volts().value(place);
        });
        if (share <= 0 || clocks.isEmpty()) {
            return;
        }
        shares += share;
        add(sums, share, moment);
        for (int clock = 0; clock < clockSums.length; clock++) {
            int stretch = at.get(clock).stretch();
            clockShares[clock][stretch] += share;
            add(clockSums[clock][stretch], share, moment);
        }
    }

    private static void add(double[] sums, double share, IslandMoment moment) {
        for (int branch = 0; branch < sums.length; branch++) {
            sums[branch] += share * moment.amps().value(branch);
        }
    }

    /** The voltages. */
    Map<PointId, float[]> volts() {
        return volts;
    }

    /** Mean current of each branch over the stretches of each clock less that over all of time, A. */
    Map<BranchId, List<double[]>> deviations() {
        Map<BranchId, List<double[]>> deviations = new HashMap<>();
        for (int branch = 0; branch < sums.length && !clocks.isEmpty(); branch++) {
            double mean = shares > 0 ? sums[branch] / shares : 0;
            List<double[]> byClock = new ArrayList<>();
            for (int clock = 0; clock < clockSums.length; clock++) {
                byClock.add(deviations(clock, branch, mean));
            }
            deviations.put(circuit.branches().get(branch).id(), byClock);
        }
        return deviations;
    }

    /** A stretch that was never met has the mean of all of time. */
    private double[] deviations(int clock, int branch, double mean) {
        double[] deviations = new double[clockShares[clock].length];
        for (int stretch = 0; stretch < deviations.length; stretch++) {
            double share = clockShares[clock][stretch];
            deviations[stretch] = share > 0 ? clockSums[clock][stretch][branch] / share - mean : 0;
        }
        return deviations;
    }
}
