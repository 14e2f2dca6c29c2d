package org.ohmloom.draw.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.DutyStep;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.chart.BarChart;
import org.ohmloom.draw.chart.BarRow;
import org.ohmloom.draw.chart.Stack;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** A load over the range of its duty: currents of one of its wires, voltage lost, temperature of the conductor. */
public final class DutyRangeCharts {

    private DutyRangeCharts() {}

    /** Three charts, one below the other. */
    public static Scene scene(
            Analysis analysis, List<DutyStep> all, ComponentId load, WireId wire, SceneFonts fonts, double widthMm) {
        List<DutyStep> steps =
                all.stream().filter(step -> step.load().equals(load)).toList();
        WireRating rating = analysis.ratings().get(wire);
        String state = steps.stream()
                .findFirst()
                .map(step -> analysis.harness().states().get(step.state()).name())
                .orElse("");
        BarChart currents = new BarChart(
                StudyTexts.text("duty-range", load, wire, rating.gauge().text().replace("mm2", "mm²")),
                StudyTexts.text("duty-range.about", state),
                Dimension.CURRENT,
                List.of(StudyTexts.text("on"), StudyTexts.text("rms"), StudyTexts.text("mean")),
                StudyTexts.text("may-carry"),
                steps.stream()
                        .flatMap(step -> on(step, wire).stream()
                                .map(each -> row(
                                        step, wire, allowed(rating), each.onAmps(), each.rmsAmps(), each.meanAmps())))
                        .toList());
        BarChart drops = new BarChart(
                StudyTexts.text("duty-range.drops"),
                Text.NONE,
                Dimension.VOLTAGE,
                List.of(StudyTexts.text("duty-range.way"), Text.of(wire)),
                StudyTexts.text("allowed"),
                steps.stream()
                        .flatMap(step -> on(step, wire).stream()
                                .map(each -> row(
                                        step,
                                        wire,
                                        OptionalDouble.of(step.limitVolts()),
                                        step.dropVolts(),
                                        each.dropVolts())))
                        .toList());
        BarChart warmth = new BarChart(
                StudyTexts.text("duty-range.warmth", wire),
                Text.NONE,
                Dimension.TEMPERATURE,
                List.of(StudyTexts.text("duty-range.runs-at")),
                StudyTexts.text("duty-range.limit"),
                steps.stream()
                        .flatMap(step -> on(step, wire).stream()
                                .map(each -> row(step, wire, limitCelsius(rating), each.celsius())))
                        .toList());
        return Stack.of(
                List.of(currents.scene(fonts, widthMm), drops.scene(fonts, widthMm), warmth.scene(fonts, widthMm)));
    }

    private static Optional<DutyStep.OnWire> on(DutyStep step, WireId wire) {
        return step.wires().stream().filter(each -> each.wire().equals(wire)).findFirst();
    }

    private static OptionalDouble allowed(WireRating rating) {
        return rating.ampacity()
                .map(Ampacity::limitAmps)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private static OptionalDouble limitCelsius(WireRating rating) {
        return rating.ampacity()
                .map(Ampacity::limitCelsius)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private static BarRow row(DutyStep step, WireId wire, OptionalDouble limit, double... values) {
        BarRow row = BarRow.of(Text.of(Formats.percent(step.dutyFraction())), values);
        return new BarRow(row.label(), row.values(), limit, Optional.of(wire.value()));
    }
}
