package org.ohmloom.size;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

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
            return Demand.none(Governor.VOLTAGE_DROP, model.chooser().facts().family(wire), "drop.none");
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
        Text words = spending(binding.budget());
        if (smallest.isEmpty()) {
            return Demand.unmet(
                    governor,
                    SizeTexts.text("joint.not-alone", words),
                    Demand.largest(model.chooser().facts().family(wire)).citation());
        }
        ConductorRow row = smallest.get();
        Text next = place == 0
                ? SizeTexts.text("joint.thinnest")
                : SizeTexts.text(
                        "joint.thinner",
                        thinner.gauge().text(),
                        Formats.volts(lost(binding, thinner) - binding.budget().limitVolts()));
        return Demand.met(
                governor,
                row,
                SizeTexts.text("joint.keeps", words, next, row.citation().text()),
                row.citation(),
                keeps);
    }

    private double lost(BudgetReading.Read read, ConductorRow row) {
        return model.spentVolts(read, wire.id(), row);
    }

    /** The budget and what each segment spends of it, this wire first, then the largest. */
    private Text spending(LoadBudget budget) {
        List<LoadBudget.WireSpend> spends = new ArrayList<>(budget.wires());
        spends.sort(Comparator.comparing(
                        (LoadBudget.WireSpend spend) -> !spend.wire().equals(wire.id()))
                .thenComparing(
                        Comparator.comparingDouble(LoadBudget.WireSpend::volts).reversed()));
        List<Text> parts = new ArrayList<>();
        parts.add(SizeTexts.text(
                "joint.loses",
                budget.load(),
                Formats.volts(budget.limitVolts()),
                SizeTexts.state(budget.state()),
                Formats.volts(budget.spentVolts()),
                part(budget, budget.otherVolts())));
        double rest = 0;
        for (int k = 0; k < spends.size(); k++) {
            LoadBudget.WireSpend spend = spends.get(k);
            if (k < MOST_NAMED) {
                boolean here = spend.wire().equals(wire.id());
                parts.add(
                        SizeTexts.text(here ? "joint.in-this" : "joint.in", part(budget, spend.volts()), spend.wire()));
            } else {
                rest += spend.volts();
            }
        }
        if (spends.size() > MOST_NAMED) {
            parts.add(SizeTexts.text("joint.in-more", part(budget, rest), spends.size() - MOST_NAMED));
        }
        return Text.joined(", ", parts);
    }

    private static String part(LoadBudget budget, double volts) {
        return Formats.volts(volts) + " (" + Formats.percent(volts / budget.limitVolts()) + ")";
    }
}
