package org.ohmloom.ground;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.ground.sensor.Unjudged;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.NetworkSolution;
import org.ohmloom.solve.SensedSolver;
import org.ohmloom.solve.Solution;

/**
 * Tries what an offset would be with one load switched off: the whole network solved again with the load open, conductors at the
 * temperatures they had. Done for the {@link #MOST_CAUSES} loads that add most to each point whose offset exceeds half of
 * its limit, in its worst state; at most {@link #MOST_SOLUTIONS} solutions in all, the largest offsets first.
 */
final class SwitchedOff {

    /** Most loads tried for one point. */
    static final int MOST_CAUSES = 3;

    /** Most solutions of one study. */
    static final int MOST_SOLUTIONS = 60;

    /** Most solutions times branches of one study; a few solutions are always made. */
    static final int MOST_WORK = 150_000;

    private static final int LEAST_SOLUTIONS = 6;

    private static final double FROM_FRACTION = 0.5;

    private record Trial(StateId state, ElementId load) {}

    private final SortedMap<StateId, Solution> solutions;
    private final BooleanSupplier cancelled;
    private final Map<Trial, SortedMap<PointId, Double>> tried = new HashMap<>();
    private final int most;
    private boolean ranOut;

    private SwitchedOff(SortedMap<StateId, Solution> solutions, BooleanSupplier cancelled) {
        this.solutions = solutions;
        this.cancelled = cancelled;
        int branches = solutions.values().stream()
                .mapToInt(solution -> solution.network().branches().size())
                .max()
                .orElse(1);
        most = Math.max(LEAST_SOLUTIONS, Math.min(MOST_SOLUTIONS, MOST_WORK / Math.max(1, branches)));
    }

    /** The same offsets, with what was tried. */
    static Offsets tried(
            Harness harness, SortedMap<StateId, Solution> solutions, Offsets found, BooleanSupplier cancelled) {
        SwitchedOff off = new SwitchedOff(solutions, cancelled);
        Map<ReferencePoint, Offset> worst = new HashMap<>();
        for (Offset offset : found.offsets()) {
            double limit = OffsetLimits.volts(harness, offset.point());
            if (offset.worstVolts() > FROM_FRACTION * limit) {
                worst.merge(
                        offset.point(), offset, (one, other) -> other.worstVolts() > one.worstVolts() ? other : one);
            }
        }
        Map<Offset, Offset> changed = new HashMap<>();
        worst.values().stream()
                .sorted(Comparator.comparingDouble(
                                (Offset offset) -> -offset.worstVolts() / OffsetLimits.volts(harness, offset.point()))
                        .thenComparing(offset -> offset.point().at()))
                .forEach(offset -> changed.put(offset, off.withTrials(offset)));
        List<Unjudged> unjudged = new ArrayList<>(found.unjudged());
        if (off.ranOut) {
            unjudged.add(Unjudged.of(
                    Unjudged.Study.OFFSETS,
                    Unjudged.Reason.TOO_MUCH_WORK,
                    ReturnTexts.text("offsets.switched-off", off.most),
                    List.of()));
        }
        return new Offsets(
                found.offsets().stream()
                        .map(offset -> changed.getOrDefault(offset, offset))
                        .toList(),
                unjudged);
    }

    private Offset withTrials(Offset offset) {
        List<OffsetShare> shares = new ArrayList<>();
        int count = 0;
        for (OffsetShare share : offset.shares()) {
            boolean adds = share.volts() * offset.volts() > 0;
            if (adds && count < MOST_CAUSES && load(offset.state(), share.cause())) {
                count++;
                shares.add(with(share, offVolts(offset, share.cause())));
            } else {
                shares.add(share);
            }
        }
        return new Offset(offset.point(), offset.state(), offset.volts(), offset.rippleVolts(), shares);
    }

    private static OffsetShare with(OffsetShare share, OptionalDouble volts) {
        return new OffsetShare(share.cause(), share.amps(), share.volts(), share.rippleVolts(), volts);
    }

    private boolean load(StateId state, ElementId cause) {
        return !branches(state, cause).isEmpty();
    }

    /** The branches that a load takes its current by. */
    private List<Branch> branches(StateId state, ElementId cause) {
        Network network = solutions.get(state).network();
        return network.branches().values().stream()
                .filter(branch -> branch.element().filter(cause::equals).isPresent())
                .filter(branch -> branch.kind() == BranchKind.LOAD || branch.kind() == BranchKind.PRESENT_LOAD)
                .toList();
    }

    private OptionalDouble offVolts(Offset offset, ElementId load) {
        Trial trial = new Trial(offset.state(), load);
        if (!tried.containsKey(trial)) {
            if (tried.size() >= most) {
                ranOut = true;
                return OptionalDouble.empty();
            }
            tried.put(trial, solve(trial));
        }
        Double at = tried.get(trial).get(offset.point().at());
        Double reference = tried.get(trial).get(offset.point().reference());
        return at == null || reference == null ? OptionalDouble.empty() : OptionalDouble.of(at - reference);
    }

    private SortedMap<PointId, Double> solve(Trial trial) {
        Map<BranchId, Law> open = new TreeMap<>();
        branches(trial.state(), trial.load()).forEach(branch -> open.put(branch.id(), new Law.Open()));
        NetworkSolution solved =
                SensedSolver.solve(solutions.get(trial.state()).network().withLaws(open), cancelled);
        return solved.volts();
    }
}
