package org.ohmloom.size;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Formats;

/**
 * What the drop budgets ask of a wire whose size was chosen together with others: the smallest size with which every load
 * it serves keeps its budget while the others have theirs.
 */
final class JointDemand {
    private static final int MOST_NAMED = 6;

    private final JointModel model;
    private final Wire wire;

    private JointDemand(JointModel model, Wire wire) {
        this.model = model;
        this.wire = wire;
    }

    static Demand of(JointModel model, Wire wire) {
        return new JointDemand(model, wire).demand();
    }

    private Demand demand() {
        List<BudgetReading.Read> budgets = model.budgetsOf(wire.id());
        List<ConductorRow> rows = model.chooser().facts().family(wire).rows();
        if (budgets.isEmpty()) {
            return Demand.none(
                    Governor.VOLTAGE_DROP, model.chooser().facts().family(wire), "no load's drop hangs on it");
        }
        Predicate<ConductorRow> keeps = row -> budgets.stream()
                .allMatch(
                        read -> VoltageDrop.meets(lost(read, row), read.budget().limitVolts()));
        Optional<ConductorRow> smallest = rows.stream().filter(keeps).findFirst();
        int place = smallest.map(rows::indexOf).orElse(rows.size());
        ConductorRow thinner = rows.get(Math.max(0, place - 1));
        BudgetReading.Read binding = budgets.stream()
                .max(Comparator.comparingDouble(
                        read -> lost(read, thinner) - read.budget().limitVolts()))
                .orElseThrow();
        Governor governor = binding.budget().wires().size() > 1 ? Governor.JOINT_DROP : Governor.VOLTAGE_DROP;
        String words = spending(binding.budget());
        if (smallest.isEmpty()) {
            return Demand.unmet(
                    governor,
                    words + "; no size of this wire alone keeps the budget",
                    Demand.largest(model.chooser().facts().family(wire)).citation());
        }
        ConductorRow row = smallest.get();
        String next = place == 0
                ? "; the thinnest size keeps it"
                : "; with " + thinner.gauge().text() + " here it would lose "
                        + Formats.volts(
                                lost(binding, thinner) - binding.budget().limitVolts()) + " too much";
        return Demand.met(governor, row, words + next + "; " + row.citation().text(), row.citation(), keeps);
    }

    private double lost(BudgetReading.Read read, ConductorRow row) {
        return model.spentVolts(read, wire.id(), row);
    }

    /** The budget and what each segment spends of it, this wire first, then the largest. */
    private String spending(LoadBudget budget) {
        List<LoadBudget.WireSpend> spends = new ArrayList<>(budget.wires());
        spends.sort(Comparator.comparing(
                        (LoadBudget.WireSpend spend) -> !spend.wire().equals(wire.id()))
                .thenComparing(
                        Comparator.comparingDouble(LoadBudget.WireSpend::volts).reversed()));
        StringBuilder text = new StringBuilder(budget.load() + " may lose " + Formats.volts(budget.limitVolts())
                + " (state " + budget.state() + ") and loses " + Formats.volts(budget.spentVolts()) + ": "
                + part(budget, budget.otherVolts()) + " in contacts, devices and wires whose size is not open");
        double rest = 0;
        for (int k = 0; k < spends.size(); k++) {
            LoadBudget.WireSpend spend = spends.get(k);
            if (k < MOST_NAMED) {
                String name = spend.wire().equals(wire.id())
                        ? "this wire"
                        : spend.wire().value();
                text.append(", ")
                        .append(part(budget, spend.volts()))
                        .append(" in ")
                        .append(name);
            } else {
                rest += spend.volts();
            }
        }
        if (spends.size() > MOST_NAMED) {
            text.append(", ")
                    .append(part(budget, rest))
                    .append(" in ")
                    .append(spends.size() - MOST_NAMED)
                    .append(" more");
        }
        return text.toString();
    }

    private static String part(LoadBudget budget, double volts) {
        return Formats.volts(volts) + " (" + Formats.percent(volts / budget.limitVolts()) + ")";
    }
}
