package org.ohmloom.size;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.size.joint.Budget;
import org.ohmloom.size.joint.JointAnswer;
import org.ohmloom.size.joint.JointProblem;
import org.ohmloom.size.joint.JointSolver;
import org.ohmloom.size.joint.Share;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Gauge;

/**
 * The choice of sizes as a {@link JointProblem}, with the currents of one solution: the drop of a load is what contacts,
 * devices and other wires lose there plus, for each open wire on its way, its current times the resistance of its size at
 * the temperature that current brings it to. With the sizes of the solution the model gives the solved drops exactly.
 */
public final class JointModel {
    private final ConductorChooser chooser;
    private final ProvisionalSizes sizes;
    private final UnitCost cost;
    private final List<OpenPart> parts;
    private final List<BudgetReading.Read> budgets;
    private final Map<WireId, Integer> partOf = new HashMap<>();
    private final Map<WireId, List<BudgetReading.Read>> budgetsOf = new HashMap<>();
    private final JointProblem problem;
    private final JointParts draft;

    /**
     * A model.
     *
     * @param chooser a chooser on the solution
     * @param sizes   the sizes it was solved with
     * @param scope   what may be done; a wire without a length or without a size that serves is left out
     */
    public JointModel(ConductorChooser chooser, ProvisionalSizes sizes, JointScope scope) {
        this.chooser = chooser;
        this.sizes = sizes;
        SizingInput input = chooser.facts().input();
        List<OpenPart> all = OpenPart.of(
                chooser,
                wire -> scope.open().contains(wire.id())
                        && SizeFreedom.mayChange(wire)
                        && input.routes().lengthMetres(wire).isPresent(),
                scope);
        Set<ConductorRow> rows = new LinkedHashSet<>();
        for (OpenPart part : all) {
            rows.addAll(part.rows());
            part.wires().forEach(wire -> rows.add(chooser.facts().row(wire, sizes.gauge(wire))));
        }
        cost = UnitCost.of(input.harness(), input.tables(), rows);
        Set<WireId> modelled = new LinkedHashSet<>();
        all.forEach(part -> part.wires().forEach(wire -> modelled.add(wire.id())));
        budgets = BudgetReading.of(input, wire -> modelled.contains(wire.id()));
        for (BudgetReading.Read read : budgets) {
            read.budget().wires().forEach(spend -> budgetsOf
                    .computeIfAbsent(spend.wire(), id -> new ArrayList<>())
                    .add(read));
        }
        draft = new JointParts(chooser.facts(), sizes, cost, all, budgets);
        parts = draft.useful();
        for (int part = 0; part < parts.size(); part++) {
            for (Wire wire : parts.get(part).wires()) {
                partOf.put(wire.id(), part);
            }
        }
        problem = JointProblem.of(draft.parts(), shares());
    }

    private List<Budget> shares() {
        List<Budget> all = new ArrayList<>();
        for (BudgetReading.Read read : budgets) {
            List<Share> shares = new ArrayList<>();
            LoadBudget budget = read.budget();
            for (int k = 0; k < budget.wires().size(); k++) {
                WireId wire = budget.wires().get(k).wire();
                double ohms = draft.ohms(wire, budget.state(), presentRow(wire));
                shares.add(new Share(
                        partOf.get(wire),
                        draft.curve(wire, budget.state()),
                        budget.wires().get(k).volts() / ohms));
            }
            all.add(new Budget(budget.id(), budget.limitVolts() - budget.otherVolts(), shares));
        }
        return all;
    }

    private Gauge gauge(WireId wire) {
        return sizes.gauge(input().harness().wires().get(wire));
    }

    private ConductorRow presentRow(WireId wire) {
        return chooser.facts().row(input().harness().wires().get(wire), gauge(wire));
    }

    SizingInput input() {
        return chooser.facts().input();
    }

    ConductorChooser chooser() {
        return chooser;
    }

    /** Whether any size is open. */
    public boolean isOpen() {
        return !parts.isEmpty();
    }

    /** Whether what is made least is a price; otherwise it is the mass of copper, kg. */
    public boolean isPrice() {
        return cost.isPrice();
    }

    /** The open wires with the sizes of the solution. */
    public SortedMap<WireId, Gauge> present() {
        SortedMap<WireId, Gauge> present = new TreeMap<>();
        partOf.keySet().forEach(wire -> present.put(wire, gauge(wire)));
        return present;
    }

    /** What those sizes cost. */
    public double presentCost() {
        return cost(present());
    }

    /** What some sizes of the open wires cost, kg or money. */
    public double cost(Map<WireId, Gauge> chosen) {
        double sum = 0;
        for (OpenPart part : parts) {
            for (Wire wire : part.wires()) {
                ConductorRow row = chooser.facts().row(wire, chosen.get(wire.id()));
                sum += cost.perMetre(row) * input().routes().lengthMetres(wire).orElse(0);
            }
        }
        return sum;
    }

    /** The open wires on the ways of some budgets, by {@link LoadBudget#id}. */
    public Set<WireId> wiresOf(Collection<String> keys) {
        Set<WireId> wires = new TreeSet<>();
        budgets().stream().filter(budget -> keys.contains(budget.id())).forEach(budget -> budget.wires()
                .forEach(spend -> wires.add(spend.wire())));
        return wires;
    }

    /** Some choices with those of the open wires as they were made together. */
    public SortedMap<WireId, ConductorChoice> choices(SortedMap<WireId, ConductorChoice> byThemselves) {
        SortedMap<WireId, ConductorChoice> choices = new TreeMap<>(byThemselves);
        present().forEach((id, gauge) -> {
            Wire wire = input().harness().wires().get(id);
            choices.put(id, chooser.chosen(wire, JointDemand.of(this, wire), gauge));
        });
        return Collections.unmodifiableSortedMap(new CircuitSizes(chooser.facts()).level(choices));
    }

    /** How each budget is spent with the sizes of the solution. */
    public List<LoadBudget> budgets() {
        return budgets.stream().map(BudgetReading.Read::budget).toList();
    }

    /** Wires whose size in the solution is not one they may have, but for drop. */
    public List<WireId> unfit() {
        return partOf.keySet().stream()
                .filter(wire -> parts.get(partOf.get(wire)).place(gauge(wire)).isEmpty())
                .sorted()
                .toList();
    }

    /**
     * The sizes chosen together.
     *
     * @param withheld volts taken from some budgets, by {@link LoadBudget#id}
     */
    public Chosen choose(Map<String, Double> withheld) {
        List<Budget> tightened = problem.budgets().stream()
                .map(budget -> new Budget(
                        budget.id(), budget.volts() - withheld.getOrDefault(budget.id(), 0.0), budget.shares()))
                .toList();
        JointAnswer answer = JointSolver.solve(JointProblem.of(problem.parts(), tightened));
        SortedMap<WireId, Gauge> chosen = new TreeMap<>();
        partOf.forEach((wire, part) -> chosen.put(
                wire, parts.get(part).rows().get(answer.options().get(part)).gauge()));
        return new Chosen(chosen, answer);
    }

    /** No choice of sizes costs less than this at the currents of the solution. */
    public double lowerBound() {
        return JointSolver.continuousBound(problem);
    }

    /**
     * Sizes and how good they are.
     *
     * @param sizes  the size of every open wire
     * @param answer cost, bounds, and budgets no choice keeps
     */
    public record Chosen(SortedMap<WireId, Gauge> sizes, JointAnswer answer) {}

    /** What a load loses in all when a wire on its way has another size, V. */
    double spentVolts(BudgetReading.Read read, WireId wire, ConductorRow row) {
        int place = read.place(wire);
        StateId state = read.budget().state();
        double volts = read.budget().wires().get(place).volts();
        double ratio = draft.ohms(wire, state, row) / draft.ohms(wire, state, presentRow(wire));
        return read.budget().spentVolts() + volts * (ratio - 1);
    }

    /** The budgets a wire spends of. */
    List<BudgetReading.Read> budgetsOf(WireId wire) {
        return budgetsOf.getOrDefault(wire, List.of());
    }

    /** The sizes a wire of the model may have, thinnest first. */
    List<ConductorRow> rows(WireId wire) {
        return parts.get(partOf.get(wire)).rows().stream()
                .sorted((one, other) -> Double.compare(one.copperAreaMm2(), other.copperAreaMm2()))
                .toList();
    }
}
