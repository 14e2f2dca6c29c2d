package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;
import org.ohmloom.heat.LoadedConductors;
import org.ohmloom.heat.SkinCheck;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.model.Wire;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Clock;
import org.ohmloom.solve.Solution;

/** Skin depth in a wire at the frequencies of the clocks that change its current, in any state. */
final class SkinChecks {

    /** A clock that brings less of the square of a wire's RMS current, as a share, does not switch in it. */
    private static final double LEAST_FRACTION = 0.001;

    private static final int HALVINGS = 40;

    private SkinChecks() {}

    /** The worst check of each frequency, lowest frequency first. */
    static List<SkinCheck> of(Iterable<Solution> solutions, Wire wire, RoundWire shape, double celsius) {
        Map<Double, SkinCheck> worst = new TreeMap<>();
        BranchId branch = new BranchId(wire.id().value());
        for (Solution solution : solutions) {
            Optional<BranchFlow> flow =
                    solution.flow(branch).filter(each -> LoadedConductors.isLoaded(wire, each.rmsAmps()));
            for (Clock clock : solution.duty().clocks()) {
                double alternating = flow.map(each -> alternatingFraction(solution, clock, each))
                        .orElse(0.0);
                if (alternating > LEAST_FRACTION) {
                    worst.merge(
                            clock.frequencyHertz(),
                            SkinCheck.of(clock.frequencyHertz(), shape, celsius, alternating),
                            (one, other) -> other.extraHeatFraction() > one.extraHeatFraction() ? other : one);
                }
            }
        }
        List<SkinCheck> checks = new ArrayList<>(worst.values());
        checks.sort(Comparator.comparingDouble(SkinCheck::frequencyHertz));
        return checks;
    }

    /**
     * Which share of the square of a wire's RMS current alternates with a clock. In stretch i of the clock the mean square is
     * (m + d_i)^2 plus the variance other clocks bring, m being the mean: the variance v of this clock is the one at which
     * the stretches' currents, root of (mean square - (whole variance - v)), have the mean m. Found by halving.
     */
    private static double alternatingFraction(Solution solution, Clock clock, BranchFlow flow) {
        double square = flow.rmsAmps() * flow.rmsAmps();
        double mean = Math.abs(flow.amps());
        double variance = Math.max(0, square - mean * mean);
        if (variance == 0) {
            return 0;
        }
        double[] rest = new double[clock.stretches().size()];
        for (int number = 0; number < rest.length; number++) {
            rest[number] = solution.duty().meanSquareAmps(flow.branch().id(), clock, number) - variance;
        }
        double low = 0;
        double high = variance;
        for (int step = 0; step < HALVINGS; step++) {
            double middle = (low + high) / 2;
            double currents = 0;
            for (int number = 0; number < rest.length; number++) {
                currents +=
                        clock.stretches().get(number).shareFraction() * Math.sqrt(Math.max(0, rest[number] + middle));
            }
            if (currents > mean) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high / square;
    }
}
