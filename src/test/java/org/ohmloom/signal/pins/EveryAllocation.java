package org.ohmloom.signal.pins;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** Tries every allocation of a small problem; knows nothing of how one is searched for. */
public final class EveryAllocation {

    private EveryAllocation() {}

    /** The least cost of any allocation that keeps every limit; infinite when there is none. */
    public static double leastPoints(PinProblem problem) {
        return least(problem, new LinkedHashMap<>(), 0);
    }

    /** The least cost by trying everything. */
    private static double least(PinProblem problem, Map<Claim, Slot> chosen, int next) {
        if (next == problem.claims().size()) {
            return keepsLimits(problem, chosen) ? AllocationCost.of(problem, chosen) : Double.POSITIVE_INFINITY;
        }
        double least = Double.POSITIVE_INFINITY;
        Claim claim = problem.claims().get(next);
        for (Slot slot : problem.slots()) {
            long taken = chosen.values().stream().filter(slot::equals).count();
            boolean suits = slot.roles().contains(claim.role())
                    && !claim.barred().contains(slot.id())
                    && chosen.entrySet().stream()
                            .noneMatch(each -> each.getKey().owner().equals(claim.owner())
                                    && !each.getValue().unit().equals(slot.unit()))
                    && claim.locked().map(slot.id()::equals).orElse(true);
            if (taken < slot.capacity() && suits) {
                chosen.put(claim, slot);
                least = Math.min(least, least(problem, chosen, next + 1));
                chosen.remove(claim);
            }
        }
        return least;
    }

    static boolean keepsLimits(PinProblem problem, Map<Claim, Slot> chosen) {
        for (Slot slot : problem.slots()) {
            if (amps(problem, chosen, Set.of(slot.id())) > slot.limitAmps().orElse(Double.POSITIVE_INFINITY)) {
                return false;
            }
        }
        return problem.budgets().stream()
                .allMatch(budget -> amps(problem, chosen, budget.slots()) <= budget.limitAmps());
    }

    /** All currents there; of two that exclude each other the smaller one does not count. */
    private static double amps(PinProblem problem, Map<Claim, Slot> chosen, Set<String> slots) {
        double amps = 0;
        Map<String, Double> excluded = new LinkedHashMap<>();
        for (Map.Entry<Claim, Slot> each : chosen.entrySet()) {
            if (slots.contains(each.getValue().id())) {
                amps += each.getKey().amps();
                boolean excludes = problem.exclusions().stream()
                        .anyMatch(group -> group.claims().contains(each.getKey().id()));
                if (excludes) {
                    excluded.put(each.getKey().id(), each.getKey().amps());
                }
            }
        }
        return excluded.size() == 2
                ? amps
                        - excluded.values().stream()
                                .mapToDouble(each -> each)
                                .min()
                                .orElseThrow()
                : amps;
    }
}
