package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;
import org.ohmloom.heat.SkinCheck;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.model.Wire;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Clock;
import org.ohmloom.solve.Solution;

/** Skin depth in a wire at the frequencies of the clocks that change its current, in any state. */
final class SkinChecks {

    /** A clock whose stretches differ by less in a wire, as a share of the wire's mean square, does not switch in it. */
    private static final double SAME_FRACTION = 0.01;

    private SkinChecks() {}

    /** The worst check of each frequency, lowest frequency first. */
    static List<SkinCheck> of(Iterable<Solution> solutions, Wire wire, RoundWire shape, double celsius) {
        Map<Double, SkinCheck> worst = new TreeMap<>();
        BranchId branch = new BranchId(wire.id().value());
        for (Solution solution : solutions) {
            Optional<BranchFlow> flow = solution.flow(branch).filter(each -> each.rmsAmps() > 0);
            for (Clock clock : solution.duty().clocks()) {
                if (flow.isPresent()
                        && switches(solution, branch, clock, flow.get().rmsAmps())) {
                    double mean = flow.get().amps() / flow.get().rmsAmps();
                    double alternating = Math.max(0, 1 - mean * mean);
                    SkinCheck check = SkinCheck.of(clock.frequencyHertz(), shape, celsius, alternating);
                    worst.merge(
                            clock.frequencyHertz(),
                            check,
                            (one, other) -> other.extraHeatFraction() > one.extraHeatFraction() ? other : one);
                }
            }
        }
        List<SkinCheck> checks = new ArrayList<>(worst.values());
        checks.sort(Comparator.comparingDouble(SkinCheck::frequencyHertz));
        return checks;
    }

    private static boolean switches(Solution solution, BranchId branch, Clock clock, double rmsAmps) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int number = 0; number < clock.stretches().size(); number++) {
            double square = solution.duty().meanSquareAmps(branch, clock, number);
            least = Math.min(least, square);
            most = Math.max(most, square);
        }
        return most - least > SAME_FRACTION * rmsAmps * rmsAmps;
    }
}
