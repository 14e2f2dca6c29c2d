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
import org.ohmloom.words.Text;

/** The worst over all allowed combinations of loads beside the worst of the named states. */
public final class CombinationCharts {

    private CombinationCharts() {}

    /** Heating currents of the wires where a combination adds most; empty when none carries anything. */
    public static Optional<BarChart> currents(Analysis analysis, int mostRows) {
        return chart(
                WorstCase.currents(analysis),
                StudyTexts.text("combination.currents"),
                Dimension.CURRENT,
                StudyTexts.text("may-carry"),
                mostRows);
    }

    /** Drops of the loads, the least margin first; empty when no load runs. */
    public static Optional<BarChart> drops(Analysis analysis, int mostRows) {
        return chart(
                WorstCase.drops(analysis),
                StudyTexts.text("combination.drops"),
                Dimension.VOLTAGE,
                StudyTexts.text("allowed"),
                mostRows);
    }

    private static Optional<BarChart> chart(
            List<WorstCase> cases, Text title, Dimension dimension, Text limit, int mostRows) {
        List<BarRow> rows = new ArrayList<>();
        cases.stream()
                .sorted(Comparator.comparingDouble(WorstCase::useRatio).reversed())
                .limit(mostRows)
                .forEach(each -> rows.add(new BarRow(
                        Text.of(each.label()),
                        List.of(OptionalDouble.of(each.worst()), OptionalDouble.of(each.named())),
                        each.allowed(),
                        Optional.of(each.element().value()))));
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new BarChart(
                        title,
                        StudyTexts.text("combination.about"),
                        dimension,
                        List.of(StudyTexts.text("combination.any"), StudyTexts.text("combination.named")),
                        limit,
                        rows));
    }
}
