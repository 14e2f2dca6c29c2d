package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.tolerance.Measure;
import org.ohmloom.analysis.tolerance.Outcome;
import org.ohmloom.analysis.tolerance.Shares;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.chart.BarChart;
import org.ohmloom.draw.chart.BarRow;
import org.ohmloom.draw.chart.Stack;
import org.ohmloom.model.Harness;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Constants;
import org.ohmloom.words.Text;

/** A result over all harnesses drawn, and what makes its spread. */
public final class ToleranceCharts {

    private ToleranceCharts() {}

    /** Two charts, one below the other; the second only where the result varies. */
    public static Scene scene(Harness harness, Outcome outcome, SceneFonts fonts, double widthMm) {
        List<Scene> charts = new ArrayList<>(List.of(values(harness, outcome).scene(fonts, widthMm)));
        outcome.shares().ifPresent(shares -> charts.add(shares(shares).scene(fonts, widthMm)));
        return Stack.of(charts);
    }

    private static BarChart values(Harness harness, Outcome outcome) {
        Measure measure = outcome.watch().measure();
        return new BarChart(
                Text.joined(
                        ": ",
                        List.of(Text.of(Named.label(harness, outcome.watch().subject())), Constants.text(measure))),
                Text.of(Named.state(harness, outcome.watch().state())),
                measure.unit().dimension(),
                List.of(StudyTexts.text("tolerance.value")),
                outcome.watch().limit().isEmpty()
                        ? Text.NONE
                        : StudyTexts.text(measure.isFloor() ? "tolerance.at-least" : "tolerance.at-most"),
                List.of(
                        row(outcome, "least", outcome.leastValue()),
                        row(outcome, "low", outcome.lowValue()),
                        row(outcome, "entered", outcome.nominalValue()),
                        row(outcome, "high", outcome.highValue()),
                        row(outcome, "most", outcome.mostValue())));
    }

    private static BarRow row(Outcome outcome, String key, double value) {
        return new BarRow(
                StudyTexts.text("tolerance." + key),
                List.of(OptionalDouble.of(value)),
                outcome.watch().limit(),
                Optional.empty());
    }

    private static BarChart shares(Shares shares) {
        return new BarChart(
                StudyTexts.text("tolerance.shares"),
                StudyTexts.text("tolerance.shares.about", Formats.percent(1 - shares.explainedFraction())),
                Dimension.RATIO,
                List.of(StudyTexts.text("tolerance.share")),
                Text.NONE,
                shares.all().stream()
                        .map(share -> BarRow.of(Constants.text(share.kind()), share.fraction()))
                        .toList());
    }
}
