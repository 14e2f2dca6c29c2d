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
                Named.label(harness, outcome.watch().subject()) + ": " + measure.words(),
                Named.state(harness, outcome.watch().state()),
                measure.unit().dimension(),
                List.of("value"),
                outcome.watch().limit().isEmpty() ? "" : measure.isFloor() ? "at least" : "at most",
                List.of(
                        row(outcome, "least drawn", outcome.leastValue()),
                        row(outcome, "5 % below", outcome.lowValue()),
                        row(outcome, "as entered", outcome.nominalValue()),
                        row(outcome, "95 % below", outcome.highValue()),
                        row(outcome, "most drawn", outcome.mostValue())));
    }

    private static BarRow row(Outcome outcome, String label, double value) {
        return new BarRow(
                label,
                List.of(OptionalDouble.of(value)),
                outcome.watch().limit(),
                Optional.empty());
    }

    private static BarChart shares(Shares shares) {
        return new BarChart(
                "What makes the spread",
                "share of the variance; " + Formats.percent(1 - shares.explainedFraction())
                        + " by several together",
                Dimension.RATIO,
                List.of("share"),
                "",
                shares.all().stream()
                        .map(share -> BarRow.of(share.kind().words(), share.fraction()))
                        .toList());
    }
}
