package org.ohmloom.draw.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.draw.chart.BarChart;
import org.ohmloom.draw.chart.BarRow;
import org.ohmloom.ground.coupling.Coupling;
import org.ohmloom.units.Dimension;
import org.ohmloom.words.Text;

/** What wires that switch put onto signal wires beside them. */
public final class CouplingCharts {

    private static final int MOST_ROWS = 16;

    private CouplingCharts() {}

    /** Some couplings, one row each; empty when there are none. */
    public static Optional<BarChart> of(List<Coupling> couplings) {
        if (couplings.isEmpty()) {
            return Optional.empty();
        }
        List<BarRow> rows = couplings.stream()
                .limit(MOST_ROWS)
                .map(each -> new BarRow(
                        StudyTexts.text("coupling.onto", each.culprit(), each.victim()),
                        List.of(
                                OptionalDouble.of(Math.abs(each.volts())),
                                each.filteredVolts().isPresent()
                                        ? OptionalDouble.of(
                                                Math.abs(each.filteredVolts().getAsDouble()))
                                        : OptionalDouble.empty()),
                        each.limitVolts(),
                        Optional.of(each.victim().value())))
                .toList();
        return Optional.of(new BarChart(
                StudyTexts.text("coupling"),
                couplings.size() > MOST_ROWS ? StudyTexts.text("largest", MOST_ROWS, couplings.size()) : Text.NONE,
                Dimension.VOLTAGE,
                List.of(StudyTexts.text("coupling.input"), StudyTexts.text("coupling.filtered")),
                StudyTexts.text("coupling.limit"),
                rows));
    }
}
