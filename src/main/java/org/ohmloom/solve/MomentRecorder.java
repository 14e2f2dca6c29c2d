package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ohmloom.graph.Branch;
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
    private final Map<Integer, ClockReading> amps = new TreeMap<>();

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
        if (clocks.isEmpty()) {
            return;
        }
        for (PointId point : watched) {
            if (circuit.holds(point)) {
                volts.put(point, new float[moments]);
            }
        }
        List<Branch> branches = circuit.branches();
        for (int branch = 0; branch < branches.size(); branch++) {
            amps.put(branch, new ClockReading(clocks));
        }
    }

    /** Takes down a moment that stands for a share of time. */
    void add(int number, List<Part> at, double share, IslandMoment moment) {
        volts.forEach((point, values) -> {
            int place = circuit.number(point);
            values[number] = place < 0 ? 0 : (float) moment.volts().value(place);
        });
        if (share > 0) {
            amps.forEach(
                    (branch, reading) -> reading.add(at, share, moment.amps().value(branch)));
        }
    }

    /** The voltages. */
    Map<PointId, float[]> volts() {
        return volts;
    }

    /** Mean current of each branch over the stretches of each clock less that over all of time, A. */
    Map<BranchId, List<double[]>> deviations() {
        Map<BranchId, List<double[]>> deviations = new HashMap<>();
        amps.forEach((branch, reading) -> {
            List<double[]> byClock = new ArrayList<>();
            for (int clock = 0; clock < clocks.size(); clock++) {
                byClock.add(reading.deviations(clock));
            }
            deviations.put(circuit.branches().get(branch).id(), byClock);
        });
        return deviations;
    }
}
