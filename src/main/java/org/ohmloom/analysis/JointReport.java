package org.ohmloom.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.ohmloom.bundle.CopperMass;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.JointChoice;
import org.ohmloom.size.JointChoice.Outcome;
import org.ohmloom.size.JointModel;
import org.ohmloom.size.JointScope;
import org.ohmloom.size.LoadBudget;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.size.SizeFreedom;
import org.ohmloom.units.Formats;

/** Sums up a joint choice: what it costs, how little it could cost, how each load spends its budget. */
final class JointReport {
    private final Bench bench;
    private final SizesByWire entered;
    private final SizesByWire alone;
    private final List<String> steps;
    private final boolean price;

    JointReport(Bench bench, SizesByWire entered, SizesByWire alone, List<String> steps, boolean price) {
        this.bench = bench;
        this.entered = entered;
        this.alone = alone;
        this.steps = steps;
        this.price = price;
    }

    /** No size is open. */
    JointChoice nothingOpen(JointTrial first) {
        JointModel all = all(first);
        double kg = kilograms(alone.sizes());
        return new JointChoice(
                Outcome.NOTHING_OPEN,
                "Every wire has a size that serves or may not be changed: nothing to choose.",
                false,
                kg,
                kg,
                kg,
                kg,
                kg,
                kg,
                kg,
                allOpenBound(all, alone.sizes()),
                new TreeMap<>(),
                leastLeft(all.budgets()),
                first.overspent(List.of()).stream().map(LoadBudget::id).toList(),
                steps);
    }

    /** The choice when the rounds are over: the best verified one, or what each wire needs by itself. */
    JointSized finished(
            Optional<JointTrial> best,
            JointTrial first,
            JointModel.Chosen bound,
            List<String> unmet,
            SortedMap<WireId, ConductorChoice> byThemselves,
            Function<JointTrial, SizesByWire> asEntered) {
        JointTrial taken = best.orElse(first);
        boolean joint = taken != first;
        double beforeKg = kilograms(alone.sizes());
        double afterKg = kilograms(taken.sizes());
        double fixed = price ? 0 : afterKg - taken.model().presentCost();
        double after = fixed + taken.model().presentCost();
        double before = price ? first.model().presentCost() : beforeKg;
        JointModel all = all(taken);
        JointChoice choice = new JointChoice(
                joint ? Outcome.JOINT : Outcome.WIRE_BY_WIRE,
                sentence(best, joint, before, after, unmet),
                price,
                kilograms(entered.sizes()),
                beforeKg,
                afterKg,
                before,
                after,
                Math.min(after, fixed + bound.answer().lowerBound()),
                Math.min(after, fixed + bound.answer().continuousBound()),
                allOpenBound(all, taken.sizes()),
                taken.model().present(),
                leastLeft(all.budgets()),
                unmet,
                steps);
        SizesByWire shown = joint ? asEntered.apply(taken) : entered;
        return new JointSized(
                shown.sizes(),
                shown.heated(),
                choice,
                best.isPresent() ? taken.model().choices(byThemselves) : byThemselves);
    }

    private String sentence(Optional<JointTrial> best, boolean joint, double before, double after, List<String> unmet) {
        String lost = unmet.isEmpty()
                ? ""
                : " No choice keeps the drop budget of " + String.join(", ", unmet) + "; the others are kept.";
        if (best.isEmpty()) {
            return "No sizes chosen together passed the full analysis: each wire has what it needs by itself." + lost;
        }
        if (!joint) {
            return "Sizes chosen together do not take less: each wire has what it needs by itself." + lost;
        }
        return "The open sizes are chosen together and verified by the full analysis: " + amount(after)
                + (after < before ? " instead of " : ", where by themselves they would take ")
                + amount(before) + "." + lost;
    }

    /** One round in words. */
    String round(int round, JointModel.Chosen chosen, List<String> objections, boolean probing) {
        return String.format(
                Locale.ROOT,
                "round %d: open sizes of %s chosen%s, none below %s; full analysis: %s",
                round,
                exact(chosen.answer().cost()),
                probing ? " with budgets a thousandth larger, as a trial" : "",
                exact(chosen.answer().lowerBound()),
                objections.isEmpty() ? "all budgets and demands are kept" : String.join("; ", objections));
    }

    /** The round that found nothing better. */
    String nothingLess(int round, JointModel.Chosen chosen, boolean whole) {
        return String.format(
                Locale.ROOT,
                "round %d: nothing less than %s found%s, none below %s",
                round,
                exact(chosen.answer().cost()),
                whole ? "" : " with the tightened budgets",
                exact(chosen.answer().lowerBound()));
    }

    private String exact(double cost) {
        return String.format(Locale.ROOT, "%.5g%s", cost, price ? " in money" : " kg");
    }

    private String amount(double cost) {
        return price ? Formats.number(cost) + " in money" : Formats.kilograms(cost) + " of copper";
    }

    private double kilograms(ProvisionalSizes sizes) {
        CopperMass copper = new CopperMass(bench.tables().copper().density());
        return bench.harness().wires().all().stream()
                .filter(wire -> !wire.existing())
                .mapToDouble(wire -> copper.kilograms(
                        bench.resistance().row(wire, sizes.gauge(wire)),
                        bench.length(wire).orElse(0)))
                .sum();
    }

    /** The problem with every size open that may be changed. */
    private JointModel all(JointTrial trial) {
        Set<WireId> all = new TreeSet<>();
        bench.harness().wires().all().stream().filter(SizeFreedom::mayChange).forEach(wire -> all.add(wire.id()));
        return new JointModel(trial.chooser(), trial.sizes(), new JointScope(all, false, Set.of()));
    }

    /** What all sizes that are not locked would cost at least; empty when none of those entered is among them. */
    private OptionalDouble allOpenBound(JointModel all, ProvisionalSizes sizes) {
        boolean entered = bench.harness().wires().all().stream()
                .anyMatch(wire -> wire.gauge().isPresent() && SizeFreedom.mayChange(wire));
        if (!entered || all.isPrice() || !all.isOpen()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(kilograms(sizes) - all.presentCost() + all.lowerBound());
    }

    /** Of each load the state where least of its budget is left. */
    private static List<LoadBudget> leastLeft(List<LoadBudget> budgets) {
        SortedMap<ComponentId, LoadBudget> least = new TreeMap<>();
        Comparator<LoadBudget> byLeft = Comparator.comparingDouble(LoadBudget::leftVolts);
        budgets.forEach(budget ->
                least.merge(budget.load(), budget, (one, other) -> byLeft.compare(other, one) < 0 ? other : one));
        return List.copyOf(least.values());
    }
}
