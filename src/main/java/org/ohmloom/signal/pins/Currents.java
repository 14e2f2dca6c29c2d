package org.ohmloom.signal.pins;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Limits of current: of a slot for all its claims together, and of budgets over several slots. */
final class Currents {
    private static final double NOISE_RATIO = 1e-9;

    private Currents() {}

    /** Whether a claim may go to a slot beside what is chosen. */
    static boolean allow(PinProblem problem, Map<Claim, Slot> chosen, Claim claim, Slot slot) {
        if (slot.limitAmps().isPresent()
                && amps(chosen, slot) + claim.amps() > slot.limitAmps().getAsDouble() * (1 + NOISE_RATIO)) {
            return false;
        }
        return problem.budgets().stream()
                .filter(budget -> budget.slots().contains(slot.id()))
                .allMatch(budget -> amps(chosen, budget) + claim.amps() <= budget.limitAmps() * (1 + NOISE_RATIO));
    }

    private static double amps(Map<Claim, Slot> chosen, Slot slot) {
        return chosen.entrySet().stream()
                .filter(each -> each.getValue().equals(slot))
                .mapToDouble(each -> each.getKey().amps())
                .sum();
    }

    private static double amps(Map<Claim, Slot> chosen, Budget budget) {
        return chosen.entrySet().stream()
                .filter(each -> budget.slots().contains(each.getValue().id()))
                .mapToDouble(each -> each.getKey().amps())
                .sum();
    }

    /** What is in the way when every claim has a slot by its role, but no allocation keeps the limits. */
    static PinPlan.Impossible inTheWay(PinProblem problem) {
        Map<Slot, Integer> free = new LinkedHashMap<>();
        problem.slots().forEach(slot -> free.put(slot, slot.capacity()));
        Relaxation.Assigned assigned = Relaxation.of(
                problem.claims(), free, (claim, slot) -> slot.serves(claim) ? 0 : Double.POSITIVE_INFINITY);
        List<String> limits = new ArrayList<>();
        List<String> helps = new ArrayList<>();
        for (Slot slot : problem.slots()) {
            double amps = amps(assigned.chosen(), slot);
            if (slot.limitAmps().isPresent() && amps > slot.limitAmps().getAsDouble() * (1 + NOISE_RATIO)) {
                limits.add(slot.id() + " would carry " + text(amps) + " and may carry "
                        + text(slot.limitAmps().getAsDouble()));
            }
        }
        for (Budget budget : problem.budgets()) {
            double amps = amps(assigned.chosen(), budget);
            if (amps > budget.limitAmps() * (1 + NOISE_RATIO)) {
                limits.add(budget.name() + " would carry " + text(amps) + " and may carry " + text(budget.limitAmps()));
                helps.add("a relay of its own for a load on " + budget.name() + ", or "
                        + text(amps - budget.limitAmps()) + " less on it");
            }
        }
        return new PinPlan.Impossible(List.of(), limits, 0, helps);
    }

    private static String text(double amps) {
        return String.format(Locale.ROOT, "%.3g A", amps);
    }
}
