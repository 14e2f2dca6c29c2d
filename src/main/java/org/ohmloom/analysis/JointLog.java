package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ohmloom.size.JointChoice;
import org.ohmloom.size.LoadBudget;
import org.ohmloom.units.Formats;

/** The joint choice of sizes in the calculation log. */
final class JointLog {
    private final List<CalculationLog.Line> lines = new ArrayList<>();

    private JointLog() {}

    /** The lines: sums, bound, rounds, and each load's budget. */
    static List<CalculationLog.Line> of(JointChoice joint) {
        JointLog log = new JointLog();
        log.write(joint);
        return log.lines;
    }

    private void write(JointChoice joint) {
        String unit = joint.isPrice() ? " in money" : " kg of copper";
        add(0, "Sizes chosen together: " + joint.sentence());
        add(
                1,
                String.format(
                        Locale.ROOT,
                        "before %.4g, with the choice %.4g, no choice of the open sizes below %.4g, with sizes between"
                                + " allowed %.4g, all%s",
                        joint.before(),
                        joint.after(),
                        joint.lowerBound(),
                        joint.continuousBound(),
                        unit));
        add(
                1,
                "Bound: largest found of g = sum of min (c + w / c) - sum of price x budget over prices of a volt not below 0;"
                        + " c the cost of a wire, w = its current x cost x resistance x price");
        joint.steps().forEach(step -> add(2, step.english()));
        for (LoadBudget budget : joint.budgets()) {
            add(
                    1,
                    "Drop budget of " + budget.load() + " in " + budget.state() + ": "
                            + Formats.volts(budget.spentVolts()) + " of " + Formats.volts(budget.limitVolts())
                            + " spent, "
                            + Formats.volts(budget.otherVolts())
                            + " in contacts, devices and wires whose size may not be changed");
            for (LoadBudget.WireSpend spend : budget.wires()) {
                add(2, spend.wire() + " " + Formats.volts(spend.volts()));
            }
        }
    }

    private void add(int depth, String text) {
        lines.add(new CalculationLog.Line(depth, text));
    }
}
