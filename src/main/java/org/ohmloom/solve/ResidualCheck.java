package org.ohmloom.solve;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.PointId;

/**
 * Recomputes from the published numbers alone how well they satisfy Kirchhoff's laws. Shares no code with the solver.
 *
 * <ul>
 *   <li>Current law: at every point the mean currents of all branches sum to 0.
 *   <li>Voltage law: along every branch with a resistance V(from) - V(to) = amps x ohms. Around a loop the differences
 *       of point voltages cancel of themselves, so this covers every loop.
 * </ul>
 *
 * @param amps           largest imbalance of currents at a point, A
 * @param imbalanceRatio largest imbalance over the largest current at the point, the latter taken as at least 1 A
 * @param volts          largest |V - I R| of a branch, V
 * @param dropRatio      largest |V - I R| over the greater voltage at its ends, the latter taken as at least 1 V
 */
record ResidualCheck(double amps, double imbalanceRatio, double volts, double dropRatio) {

    /**
     * Checks a solution or the part of it that is one island.
     *
     * @param flows      currents of all branches at the points looked at
     * @param pointVolts voltage of each point that has one, V
     */
    static ResidualCheck of(Collection<BranchFlow> flows, Map<PointId, Double> pointVolts) {
        Map<PointId, Double> sums = new HashMap<>();
        Map<PointId, Double> largest = new HashMap<>();
        double worstVolts = 0;
        double worstDrop = 0;
        for (BranchFlow flow : flows) {
            PointId from = flow.branch().from();
            PointId to = flow.branch().to();
            sums.merge(from, flow.amps(), Double::sum);
            sums.merge(to, -flow.amps(), Double::sum);
            largest.merge(from, Math.abs(flow.amps()), Math::max);
            largest.merge(to, Math.abs(flow.amps()), Math::max);
            Optional<Double> start = Optional.ofNullable(pointVolts.get(from));
            Optional<Double> end = Optional.ofNullable(pointVolts.get(to));
            OptionalDouble ohms = flow.ohms();
            if (start.isPresent() && end.isPresent() && ohms.isPresent()) {
                double miss = Math.abs(start.get() - end.get() - flow.amps() * ohms.getAsDouble());
                double greater = Math.max(1, Math.max(Math.abs(start.get()), Math.abs(end.get())));
                worstVolts = Math.max(worstVolts, miss);
                worstDrop = Math.max(worstDrop, miss / greater);
            }
        }
        double worstAmps = 0;
        double worstRatio = 0;
        for (Map.Entry<PointId, Double> sum : sums.entrySet()) {
            double miss = Math.abs(sum.getValue());
            worstAmps = Math.max(worstAmps, miss);
            worstRatio = Math.max(worstRatio, miss / Math.max(1, largest.get(sum.getKey())));
        }
        return new ResidualCheck(worstAmps, worstRatio, worstVolts, worstDrop);
    }

    /** Whether the numbers are good enough to be called a solution. */
    boolean isWithinTolerances() {
        return imbalanceRatio <= Tolerances.IMBALANCE_RATIO && dropRatio <= Tolerances.DROP_RATIO;
    }
}
