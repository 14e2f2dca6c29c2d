package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.OutputDuty;
import org.ohmloom.draw.chart.BarChart;
import org.ohmloom.draw.chart.BarRow;
import org.ohmloom.graph.BranchId;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** On-state, RMS and mean current along the way of a load that is run at a duty. */
public final class DutyCharts {

    private DutyCharts() {}

    /** The feed of an output, its loads and freewheel paths, and the wires on the ways of the loads. */
    public static Optional<BarChart> of(Analysis analysis, OperatingState state, OutputDuty output) {
        Optional<Solution> solution = analysis.solution(state.id());
        if (solution.isEmpty() || output.loads().isEmpty()) {
            return Optional.empty();
        }
        List<BarRow> rows = new ArrayList<>();
        rows.add(row(
                StudyTexts.text("duty.feed", output.output()),
                output.feed(),
                OptionalDouble.empty(),
                Optional.empty()));
        Set<BranchId> way = new LinkedHashSet<>();
        for (OutputDuty.BehindOutput each : output.loads()) {
            Optional<String> element = Optional.of(each.load().value());
            rows.add(row(StudyTexts.text("duty.load", each.load()), each.flow(), OptionalDouble.empty(), element));
            each.freewheel()
                    .ifPresent(flow -> rows.add(row(
                            StudyTexts.text("duty.freewheel", each.load()), flow, OptionalDouble.empty(), element)));
            LoadVolts volts = solution.get().loads().get(each.load());
            if (volts != null) {
                way.addAll(volts.feedPath());
                way.addAll(volts.returnPath());
            }
        }
        Map<String, WireRating> ratings = new TreeMap<>();
        analysis.ratings().forEach((wire, rating) -> ratings.put(wire.value(), rating));
        for (BranchId branch : way) {
            WireRating rating = ratings.get(branch.value());
            if (rating != null) {
                solution.get()
                        .flow(branch)
                        .ifPresent(flow -> rows.add(row(
                                StudyTexts.text("duty.wire", branch),
                                flow,
                                limit(rating),
                                Optional.of(branch.value()))));
            }
        }
        return Optional.of(new BarChart(
                StudyTexts.text(
                        "duty", output.output(), Formats.percent(output.pulse().dutyFraction())),
                Text.of(state.name() + ", " + Formats.hertz(output.pulse().frequencyHertz())),
                Dimension.CURRENT,
                List.of(StudyTexts.text("on"), StudyTexts.text("rms"), StudyTexts.text("mean")),
                StudyTexts.text("may-carry"),
                rows));
    }

    private static OptionalDouble limit(WireRating rating) {
        return rating.ampacity().map(Ampacity::limitAmps).stream()
                .mapToDouble(Double::doubleValue)
                .findFirst();
    }

    private static BarRow row(Text label, BranchFlow flow, OptionalDouble limit, Optional<String> element) {
        return new BarRow(
                label,
                List.of(
                        OptionalDouble.of(Math.abs(flow.onAmps())),
                        OptionalDouble.of(flow.rmsAmps()),
                        OptionalDouble.of(Math.abs(flow.amps()))),
                limit,
                element);
    }
}
