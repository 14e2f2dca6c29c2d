package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.Comparator;
import java.util.List;
import org.ohmloom.size.JointChoice;
import org.ohmloom.size.LoadBudget;
import org.ohmloom.units.Formats;

/** The joint choice of sizes as text: copper before and after, the bound, and how loads spend their drop budgets. */
final class JointText {
    private static final int WIDTH = 120;
    private static final int MOST_WIRES = 4;

    private JointText() {}

    static void print(JointChoice joint, PrintWriter out) {
        out.println("SIZES CHOSEN TOGETHER");
        out.println(Wrap.indented(joint.sentence(), 2, WIDTH));
        out.println(Wrap.indented(
                "Copper: " + Formats.kilograms(joint.enteredKg()) + " as entered, "
                        + Formats.kilograms(joint.beforeKg()) + " with what each wire needs by itself, "
                        + Formats.kilograms(joint.afterKg()) + " with the choice." + bound(joint),
                2,
                WIDTH));
        joint.allOpenBoundKg()
                .ifPresent(bound -> out.println(Wrap.indented(
                        "With every size open that is not locked, no choice takes less than " + Formats.kilograms(bound)
                                + " at these currents ('size --anew' chooses them).",
                        2,
                        WIDTH)));
        joint.steps().forEach(step -> out.println(Wrap.indented(step.english(), 4, WIDTH)));
        budgets(joint, out);
    }

    private static String bound(JointChoice joint) {
        if (joint.outcome() == JointChoice.Outcome.NOTHING_OPEN) {
            return "";
        }
        String bound = " No choice of the open sizes takes less than " + amount(joint, joint.lowerBound())
                + " at these currents and temperatures (sizes between the listed ones: "
                + amount(joint, joint.continuousBound())
                + "): ";
        return bound + (joint.isProvenLeast() ? "proven least." : "gap " + Formats.percent(joint.gapRatio()) + ".");
    }

    private static String amount(JointChoice joint, double cost) {
        return joint.isPrice() ? Formats.number(cost) + " in money" : Formats.kilograms(cost);
    }

    private static void budgets(JointChoice joint, PrintWriter out) {
        TextTable table = new TextTable()
                .left("DROP BUDGET OF")
                .left("STATE")
                .right("LIMIT")
                .right("SPENT")
                .right("IN OTHER PARTS")
                .left("IN WIRES WHOSE SIZE MAY BE CHANGED");
        joint.budgets().stream()
                .sorted(Comparator.comparingDouble(budget -> budget.leftVolts() / budget.limitVolts()))
                .forEach(budget -> table.row(
                        budget.load().value(),
                        budget.state().value(),
                        Formats.volts(budget.limitVolts()),
                        Formats.volts(budget.spentVolts()),
                        Formats.volts(budget.otherVolts()),
                        wires(budget)));
        if (!table.isEmpty()) {
            table.print(out);
        }
    }

    private static String wires(LoadBudget budget) {
        List<LoadBudget.WireSpend> largest = budget.wires().stream()
                .sorted(Comparator.comparingDouble(LoadBudget.WireSpend::volts).reversed())
                .toList();
        StringBuilder text = new StringBuilder();
        double rest = 0;
        for (int k = 0; k < largest.size(); k++) {
            LoadBudget.WireSpend spend = largest.get(k);
            if (k < MOST_WIRES) {
                text.append(k == 0 ? "" : ", ")
                        .append(spend.wire())
                        .append(' ')
                        .append(Formats.percent(spend.volts() / budget.limitVolts()));
            } else {
                rest += spend.volts();
            }
        }
        if (largest.size() > MOST_WIRES) {
            text.append(", ")
                    .append(largest.size() - MOST_WIRES)
                    .append(" more ")
                    .append(Formats.percent(rest / budget.limitVolts()));
        }
        return text.isEmpty() ? "none" : text.toString();
    }
}
