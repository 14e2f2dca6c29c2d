package org.ohmloom.ground;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ElementId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;

/**
 * Reads off the currents before and after what an opening does.
 *
 * <p>With every output on at once it is found where the current goes; what may heat too much by that is then judged by the RMS
 * currents over the clocks of the state, where outputs switch in it.
 */
final class LossReading {

    /** Current backwards through a load from which it is told, A. */
    private static final double BACKWARDS_AMPS = 0.05;

    /** A load with less than this share of its current no longer runs. */
    private static final double DEAD_FRACTION = 0.1;

    /** A detour is told from this share of the lost current on. */
    private static final double DETOUR_FRACTION = 0.02;

    private static final int MOST_DETOURS = 6;

    /** An overload counts when the opening makes the current this much larger. */
    private static final double GROWTH_RATIO = 1.01;

    private final Solution solution;
    private final Map<BranchId, Double> before;
    private final List<CarryLimits.Limit> limits;
    private final OpenedDuties duties;

    LossReading(Solution solution, Map<BranchId, Double> before, List<CarryLimits.Limit> limits, OpenedDuties duties) {
        this.duties = duties;
        this.solution = solution;
        this.before = before;
        this.limits = limits;
    }

    /** What opening a branch does. */
    LostReturn of(ElementId opened, BranchId branch, Map<BranchId, Double> after) {
        return new LostReturn(
                opened,
                solution.network().state(),
                detours(opened, Math.abs(before.getOrDefault(branch, 0.0)), after),
                overLimit(opened, branch, after),
                loads((was, is) -> was > -BACKWARDS_AMPS && is < -BACKWARDS_AMPS, after),
                loads((was, is) -> was >= BACKWARDS_AMPS && Math.abs(is) < DEAD_FRACTION * was, after));
    }

    private List<LostReturn.Detour> detours(ElementId opened, double lostAmps, Map<BranchId, Double> after) {
        Map<ElementId, LostReturn.Detour> byMember = new HashMap<>();
        for (BranchFlow flow : solution.flows().values()) {
            Branch branch = flow.branch();
            double was = Math.abs(before.getOrDefault(branch.id(), 0.0));
            double is = Math.abs(after.getOrDefault(branch.id(), 0.0));
            Optional<ElementId> member = branch.element().filter(each -> !each.equals(opened));
            boolean grows = is - was >= Math.max(LostReturns.LEAST_AMPS, DETOUR_FRACTION * lostAmps);
            if (member.isPresent() && grows && branch.kind().part() != BranchKind.Part.SOURCE) {
                byMember.merge(
                        member.get(),
                        new LostReturn.Detour(member.get(), was, is),
                        (one, other) -> other.growthAmps() > one.growthAmps() ? other : one);
            }
        }
        return byMember.values().stream()
                .sorted(Comparator.comparingDouble((LostReturn.Detour detour) -> -detour.growthAmps())
                        .thenComparing(detour -> detour.member().value()))
                .limit(MOST_DETOURS)
                .toList();
    }

    private List<LostReturn.Overload> overLimit(ElementId opened, BranchId branch, Map<BranchId, Double> after) {
        List<LostReturn.Overload> momentary = overLimit(opened, before, after);
        return momentary.isEmpty()
                ? momentary
                : duties.rmsAmps(branch)
                        .map(rms -> overLimit(opened, duties.wholeRmsAmps(), rms))
                        .orElse(momentary);
    }

    private List<LostReturn.Overload> overLimit(
            ElementId opened, Map<BranchId, Double> whole, Map<BranchId, Double> after) {
        List<LostReturn.Overload> overloads = new ArrayList<>();
        for (CarryLimits.Limit limit : limits) {
            double was = Math.abs(whole.getOrDefault(limit.branch(), 0.0));
            double is = Math.abs(after.getOrDefault(limit.branch(), 0.0));
            if (is > limit.amps()
                    && was <= limit.amps()
                    && is > GROWTH_RATIO * was
                    && !limit.member().equals(opened)) {
                overloads.add(new LostReturn.Overload(limit.member(), is, limit.amps(), limit.source()));
            }
        }
        overloads.sort(Comparator.comparingDouble(overload -> -overload.amps() / overload.limitAmps()));
        return overloads;
    }

    /** Whether a load's current before and after fulfils a condition. */
    private interface Change {
        boolean holds(double wasAmps, double isAmps);
    }

    private List<ComponentId> loads(Change change, Map<BranchId, Double> after) {
        List<ComponentId> loads = new ArrayList<>();
        for (BranchFlow flow : solution.flows().values()) {
            Branch branch = flow.branch();
            if (branch.kind() == BranchKind.LOAD
                    && branch.element().orElseThrow() instanceof ComponentId load
                    && change.holds(before.getOrDefault(branch.id(), 0.0), after.getOrDefault(branch.id(), 0.0))) {
                loads.add(load);
            }
        }
        return loads;
    }
}
