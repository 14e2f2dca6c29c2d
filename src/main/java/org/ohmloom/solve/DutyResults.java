package org.ohmloom.solve;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;

/**
 * What comes of what switches at a duty in one operating state.
 *
 * @param clocks            the clocks, with the stretches of their periods
 * @param moments           how many moments stood for all of time, 1 when nothing switches
 * @param sampled           whether they were a sample because there are too many combinations to take all
 * @param samplingErrorRatio     largest standard error of an RMS current for that, as a share of it; 0 when all were taken
 * @param ripples           the current of each inductive load, by its branch
 * @param clamps            what active clamps swallow, by their branch
 * @param stretchSquares    mean square current of branches in each stretch of each clock, see {@link #meanSquareAmps}
 * @param stretchDeviations mean currents of branches in each stretch of each clock, see {@link #deviationAmps}
 * @param momentVolts       voltages of points that others are measured against, moment by moment
 */
public record DutyResults(
        List<Clock> clocks,
        int moments,
        boolean sampled,
        double samplingErrorRatio,
        SortedMap<BranchId, Ripple> ripples,
        SortedMap<BranchId, ClampPulse> clamps,
        Map<BranchId, List<List<Double>>> stretchSquares,
        Map<BranchId, List<double[]>> stretchDeviations,
        MomentVolts momentVolts) {

    /** Of a network in which nothing switches. */
    public static final DutyResults NONE = new DutyResults(
            List.of(), 1, false, 0, new TreeMap<>(), new TreeMap<>(), Map.of(), Map.of(), MomentVolts.NONE);

    public DutyResults {
        clocks = List.copyOf(clocks);
        ripples = Collections.unmodifiableSortedMap(new TreeMap<>(ripples));
        clamps = Collections.unmodifiableSortedMap(new TreeMap<>(clamps));
        stretchSquares = Collections.unmodifiableMap(new TreeMap<>(stretchSquares));
        stretchDeviations = Collections.unmodifiableMap(new TreeMap<>(stretchDeviations));
    }

    /** The clock of that name. */
    public Optional<Clock> clock(String id) {
        return clocks.stream().filter(clock -> clock.id().equals(id)).findFirst();
    }

    /**
     * Mean square current of a branch over one stretch of a clock, everything else averaged, A2: what heats a conductor
     * while the stretch lasts. The shares of the stretches times these sum to the square of its RMS current.
     *
     * @param branch  the branch
     * @param clock   the clock
     * @param stretch number of the stretch
     * @return 0 for a branch without current
     */
    public double meanSquareAmps(BranchId branch, Clock clock, int stretch) {
        List<List<Double>> byClock = stretchSquares.get(branch);
        int number = clocks.indexOf(clock);
        return byClock == null || number < 0 ? 0 : byClock.get(number).get(stretch);
    }

    /**
     * Mean current of a branch over one stretch of a clock, everything else averaged, less its mean over all of time, A.
     *
     * @param branch  the branch
     * @param clock   the clock
     * @param stretch number of the stretch
     * @return 0 for a branch without current
     */
    public double deviationAmps(BranchId branch, Clock clock, int stretch) {
        List<double[]> byClock = stretchDeviations.get(branch);
        int number = clocks.indexOf(clock);
        return byClock == null || number < 0 ? 0 : byClock.get(number)[stretch];
    }
}
