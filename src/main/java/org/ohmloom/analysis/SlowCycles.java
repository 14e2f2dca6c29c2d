package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.graph.BranchId;
import org.ohmloom.heat.WireHeat;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.heat.balance.Transient;
import org.ohmloom.model.Wire;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Clock;
import org.ohmloom.solve.DutyResults;
import org.ohmloom.solve.Solution;

/**
 * The peak of what switches slowly: the mean square of a current heats a conductor only when the period is under a tenth of
 * its time constant; slower clocks are judged on the highest point of the transient of their cycle. Several slow clocks in
 * one wire are taken to peak together.
 */
final class SlowCycles {

    /** A period below this share of the time constant leaves the conductor no time to follow. */
    static final double FAST_FRACTION = 0.1;

    /** No insulated conductor has a time constant of less, s; spares reckoning it for every fast clock. */
    private static final double LEAST_TIME_CONSTANT_SECONDS = 1;

    private SlowCycles() {}

    /** Where a wire gets at worst, from where its mean square brings it. */
    static WireHeat peak(Bench bench, RoundWire shape, Solution solution, Wire wire, WireHeat settled) {
        BranchId branch = new BranchId(wire.id().value());
        double rmsAmps = solution.flow(branch).map(BranchFlow::rmsAmps).orElse(0.0);
        WireHeat peak = settled;
        for (Clock clock : solution.duty().clocks()) {
            if (rmsAmps == 0 || clock.periodSeconds() < FAST_FRACTION * LEAST_TIME_CONSTANT_SECONDS) {
                continue;
            }
            double tau = bench.passingHeat().timeConstantSeconds(shape, settled, rmsAmps);
            if (clock.periodSeconds() < FAST_FRACTION * tau) {
                continue;
            }
            List<Transient.Stretch> stretches = stretches(solution.duty(), branch, clock);
            double above = bench.passingHeat().peakAboveKelvin(shape, settled, rmsAmps, stretches);
            if (above > HeatedSolutions.AGREEMENT_CELSIUS) {
                peak = peak.atPeak(peak.celsius() + above, clock.periodSeconds(), tau);
            }
        }
        return peak;
    }

    private static List<Transient.Stretch> stretches(DutyResults duty, BranchId branch, Clock clock) {
        List<Transient.Stretch> stretches = new ArrayList<>();
        for (int number = 0; number < clock.stretches().size(); number++) {
            stretches.add(new Transient.Stretch(
                    clock.stretches().get(number).shareFraction() * clock.periodSeconds(),
                    Math.sqrt(duty.meanSquareAmps(branch, clock, number))));
        }
        return stretches;
    }
}
