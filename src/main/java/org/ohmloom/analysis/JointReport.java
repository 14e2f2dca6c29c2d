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
import org.ohmloom.words.Text;

/** Sums up a joint choice: what it costs, how little it could cost, how each load spends its budget. */
final class JointReport {
    private final Bench bench;
    private final SizesByWire entered;
    private final SizesByWire alone;
    private final List<Text> steps;
    private final boolean price;

    JointReport(Bench bench, SizesByWire entered, SizesByWire alone, List<Text> steps, boolean price) {
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
                JointTexts.text("nothing-open"),
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

    private Text sentence(Optional<JointTrial> best, boolean joint, double before, double after, List<String> unmet) {
        Text chosen = best.isEmpty()
                ? JointTexts.text("not-verified")
                : joint
                        ? JointTexts.text(after < before ? "less" : "more", amount(after), amount(before))
                        : JointTexts.text("not-less");
        return unmet.isEmpty() ? chosen : JointTexts.text("lost", chosen, String.join(", ", unmet));
    }

    /** One round in words. */
    Text round(int round, JointModel.Chosen chosen, List<Text> objections, boolean probing) {
        return JointTexts.text(
                probing ? "round-as-trial" : "round",
                round,
                exact(chosen.answer().cost()),
                exact(chosen.answer().lowerBound()),
                objections.isEmpty() ? JointTexts.text("all-kept") : Text.joined("; ", objections));
    }

    /** The round that found nothing better. */
    Text nothingLess(int round, JointModel.Chosen chosen, boolean whole) {
        return JointTexts.text(
                whole ? "nothing-less" : "nothing-less-tightened",
                round,
                exact(chosen.answer().cost()),
                exact(chosen.answer().lowerBound()));
    }

    private Text exact(double cost) {
        String digits = String.format(Locale.ROOT, "%.5g", cost);
        return price ? JointTexts.text("money", digits) : Text.of(digits + " kg");
    }

    private Text amount(double cost) {
        return price
                ? JointTexts.text("money", Formats.number(cost))
                : JointTexts.text("copper", Formats.kilograms(cost));
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
