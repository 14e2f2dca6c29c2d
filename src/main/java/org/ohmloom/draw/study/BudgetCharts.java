package org.ohmloom.draw.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.draw.chart.BarChart;
import org.ohmloom.draw.chart.BarRow;
import org.ohmloom.model.Harness;
import org.ohmloom.size.JointChoice;
import org.ohmloom.size.LoadBudget;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** How loads spend the voltage they may lose, with the conductors as they were chosen. */
public final class BudgetCharts {

    /** Rows of a chart that is scrolled. */
    private static final int MOST_ROWS = 20;

    private BudgetCharts() {}

    /** The budgets with least left first; empty when there are none. */
    public static Optional<BarChart> of(Harness harness, JointChoice choice) {
        return of(harness, choice, MOST_ROWS);
    }

    /** The same for so many loads at most. */
    public static Optional<BarChart> of(Harness harness, JointChoice choice, int mostRows) {
        List<BarRow> rows = choice.budgets().stream()
                .sorted(Comparator.comparingDouble(each -> each.leftVolts() / each.limitVolts()))
                .limit(mostRows)
                .map(budget -> row(harness, budget))
                .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new BarChart(
                        StudyTexts.text("budget"),
                        copper(choice),
                        Dimension.VOLTAGE,
                        List.of(StudyTexts.text("budget.all"), StudyTexts.text("budget.wires")),
                        StudyTexts.text("budget.limit"),
                        rows));
    }

    private static BarRow row(Harness harness, LoadBudget budget) {
        String name = harness.components()
                .find(budget.load())
                .map(found -> " " + found.name())
                .orElse("");
        return new BarRow(
                Text.of(budget.load() + name),
                List.of(
                        OptionalDouble.of(Math.max(0, budget.spentVolts())),
                        OptionalDouble.of(Math.max(0, budget.spentVolts() - budget.otherVolts()))),
                OptionalDouble.of(budget.limitVolts()),
                Optional.of(budget.load().value()));
    }

    /** Copper before and after, and how little it could be. */
    public static Text copper(JointChoice choice) {
        return StudyTexts.text(
                "budget.copper", Formats.kilograms(choice.beforeKg()), Formats.kilograms(choice.afterKg()));
    }
}
