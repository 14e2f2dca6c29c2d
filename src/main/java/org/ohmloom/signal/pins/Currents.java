package org.ohmloom.signal.pins;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Limits of current: of a slot for all its claims together, and of budgets over several slots. */
final class Currents {
    private static final double NOISE_RATIO = 1e-9;

    private Currents() {}

    /** Whether a current is above a limit, A, by more than the noise of adding. */
    static boolean over(double amps, double limitAmps) {
        return amps > limitAmps * (1 + NOISE_RATIO);
    }

    /** What is in the way when every claim has a slot by its role, but no allocation keeps the limits. */
    static PinPlan.Impossible inTheWay(PinProblem problem) {
        Surroundings around = new Surroundings(problem);
        Map<Claim, Slot> chosen = Relaxation.byRole(problem).chosen();
        List<String> limits = new ArrayList<>();
        List<String> helps = new ArrayList<>();
        for (Slot slot : problem.slots()) {
            double amps = around.drawnAmps(on(chosen, slot::equals));
            if (slot.limitAmps().isPresent() && over(amps, slot.limitAmps().getAsDouble())) {
                limits.add(slot.id() + " would carry " + text(amps) + " and may carry "
                        + text(slot.limitAmps().getAsDouble()));
            }
        }
        for (Budget budget : problem.budgets()) {
            double amps = around.drawnAmps(on(chosen, slot -> budget.slots().contains(slot.id())));
            if (over(amps, budget.limitAmps())) {
                limits.add(budget.name() + " would carry " + text(amps) + " and may carry " + text(budget.limitAmps()));
                helps.add("a relay of its own for a load on " + budget.name() + ", or "
                        + text(amps - budget.limitAmps()) + " less on it");
            }
        }
        if (limits.isEmpty()) {
            problem.claims().stream()
                    .map(Claim::owner)
                    .distinct()
                    .filter(owner -> around.units(owner).isEmpty())
                    .forEach(owner -> scattered(problem, owner, limits, helps));
        }
        if (limits.isEmpty()) {
            limits.add("every line by itself finds a pin, but no plan keeps all lines of one sensor on one unit"
                    + " and every limit of current");
            helps.add("one more pin of the kind that is short on a unit that has room for the other lines");
        }
        return new PinPlan.Impossible(List.of(), limits, 0, helps);
    }

    /** Of an owner whose lines find pins on no unit all together: where each does, and what the unit with most of them lacks. */
    private static void scattered(PinProblem problem, String owner, List<String> limits, List<String> helps) {
        List<String> lines = new ArrayList<>();
        Map<String, List<Claim>> served = new TreeMap<>();
        List<Claim> own = problem.claims().stream()
                .filter(claim -> claim.owner().equals(owner))
                .toList();
        for (Claim claim : own) {
            TreeSet<String> units =
                    problem.slotsFor(claim).stream().map(Slot::unit).collect(Collectors.toCollection(TreeSet::new));
            units.forEach(unit ->
                    served.computeIfAbsent(unit, id -> new ArrayList<>()).add(claim));
            lines.add(claim.id() + " on " + String.join(", ", units));
        }
        limits.add("no unit has pins for all lines of " + owner + ": " + String.join("; ", lines));
        served.entrySet().stream()
                .max(Comparator.comparingInt(each -> each.getValue().size()))
                .ifPresent(most -> helps.add("on " + most.getKey() + " "
                        + own.stream()
                                .filter(claim -> !most.getValue().contains(claim))
                                .map(claim -> "a pin that can be " + Scarcity.words(claim.role()))
                                .distinct()
                                .collect(Collectors.joining(" and "))));
    }

    private static List<Claim> on(Map<Claim, Slot> chosen, Predicate<Slot> where) {
        return chosen.entrySet().stream()
                .filter(each -> where.test(each.getValue()))
                .map(Map.Entry::getKey)
                .toList();
    }

    static String text(double amps) {
        return String.format(Locale.ROOT, "%.3g A", amps);
    }
}
