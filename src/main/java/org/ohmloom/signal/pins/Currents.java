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
import org.ohmloom.words.Constants;
import org.ohmloom.words.Text;

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
        List<Text> limits = new ArrayList<>();
        List<Text> helps = new ArrayList<>();
        for (Slot slot : problem.slots()) {
            double amps = around.drawnAmps(on(chosen, slot::equals));
            if (slot.limitAmps().isPresent() && over(amps, slot.limitAmps().getAsDouble())) {
                limits.add(PinTexts.text(
                        "would-carry",
                        slot.id(),
                        text(amps),
                        text(slot.limitAmps().getAsDouble())));
            }
        }
        for (Budget budget : problem.budgets()) {
            double amps = around.drawnAmps(on(chosen, slot -> budget.slots().contains(slot.id())));
            if (over(amps, budget.limitAmps())) {
                limits.add(PinTexts.text("would-carry", budget.words(), text(amps), text(budget.limitAmps())));
                helps.add(PinTexts.text("relay", budget.words(), text(amps - budget.limitAmps())));
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
            limits.add(PinTexts.text("no-plan-keeps"));
            helps.add(PinTexts.text("one-more"));
        }
        return new PinPlan.Impossible(List.of(), limits, 0, helps);
    }

    /** Of an owner whose lines find pins on no unit all together: where each does, and what the unit with most of them lacks. */
    private static void scattered(PinProblem problem, String owner, List<Text> limits, List<Text> helps) {
        List<Text> lines = new ArrayList<>();
        Map<String, List<Claim>> served = new TreeMap<>();
        List<Claim> own = problem.claims().stream()
                .filter(claim -> claim.owner().equals(owner))
                .toList();
        for (Claim claim : own) {
            TreeSet<String> units =
                    problem.slotsFor(claim).stream().map(Slot::unit).collect(Collectors.toCollection(TreeSet::new));
            units.forEach(unit ->
                    served.computeIfAbsent(unit, id -> new ArrayList<>()).add(claim));
            lines.add(PinTexts.text("line-on", claim.id(), String.join(", ", units)));
        }
        limits.add(PinTexts.text("no-unit", owner, Text.joined("; ", lines)));
        served.entrySet().stream()
                .max(Comparator.comparingInt(each -> each.getValue().size()))
                .ifPresent(most -> helps.add(PinTexts.text(
                        "on-unit",
                        most.getKey(),
                        PinTexts.linked(
                                "and",
                                own.stream()
                                        .filter(claim -> !most.getValue().contains(claim))
                                        .map(claim -> PinTexts.text("pin-that-can-be", Constants.text(claim.role())))
                                        .distinct()
                                        .toList()))));
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
