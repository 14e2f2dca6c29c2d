package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.chart.BarChart;
import org.ohmloom.draw.chart.BarRow;
import org.ohmloom.units.Dimension;

/** The worst over all allowed combinations of loads beside the worst of the named states. */
public final class CombinationCharts {

    private CombinationCharts() {}

    /** Heating currents of the wires where a combination adds most; empty when none carries anything. */
    public static Optional<BarChart> currents(Analysis analysis, int mostRows) {
        return chart(
                WorstCase.currents(analysis),
                "Heating current of wires, worst of any combination",
                Dimension.CURRENT,
                "may carry",
                mostRows);
    }

    /** Drops of the loads, the least margin first; empty when no load runs. */
    public static Optional<BarChart> drops(Analysis analysis, int mostRows) {
        return chart(
                WorstCase.drops(analysis),
                "Drop of loads, worst of any combination",
                Dimension.VOLTAGE,
                "allowed",
                mostRows);
    }

    private static Optional<BarChart> chart(
            List<WorstCase> cases, String title, Dimension dimension, String limit, int mostRows) {
        List<BarRow> rows = new ArrayList<>();
        cases.stream()
                .sorted(Comparator.comparingDouble(WorstCase::useRatio).reversed())
                .limit(mostRows)
                .forEach(each -> rows.add(new BarRow(
                        each.label(),
                        List.of(OptionalDouble.of(each.worst()), OptionalDouble.of(each.named())),
                        each.allowed(),
                        Optional.of(each.element().value()))));
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new BarChart(
                        title,
                        "The ones nearest to what is allowed",
                        dimension,
                        List.of("any combination", "named states"),
                        limit,
                        rows));
    }
}
