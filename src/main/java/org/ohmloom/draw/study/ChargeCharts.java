package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.draw.chart.BarChart;
import org.ohmloom.draw.chart.BarRow;
import org.ohmloom.draw.chart.TimeChart;
import org.ohmloom.draw.chart.TimeLimit;
import org.ohmloom.draw.chart.TimeMark;
import org.ohmloom.draw.chart.TimeSpan;
import org.ohmloom.draw.chart.TimeTrace;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.charge.BatteryRun;
import org.ohmloom.solve.charge.ChargeSample;
import org.ohmloom.solve.charge.LoadLine;
import org.ohmloom.solve.charge.LoadTabulation;
import org.ohmloom.solve.charge.SequenceRun;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;

/** Charge of batteries over a sequence of states, and what the loads of a state ask of the alternators. */
public final class ChargeCharts {

    /** Loads shown of a state: those that draw most. */
    private static final int MOST_LOADS = 14;

    private ChargeCharts() {}

    /** Charge level and voltage of a battery over a sequence; empty when it never ran. */
    public static Optional<TimeChart> sequence(Harness harness, SequenceRun run, BatteryRun battery) {
        if (battery.samples().isEmpty()) {
            return Optional.empty();
        }
        List<TimeTrace.Sample> charge = new ArrayList<>();
        List<TimeTrace.Sample> volts = new ArrayList<>();
        for (ChargeSample sample : battery.samples()) {
            charge.add(new TimeTrace.Sample(sample.seconds(), sample.chargeFraction()));
            volts.add(new TimeTrace.Sample(sample.seconds(), sample.volts()));
        }
        Optional<String> element = Optional.of(battery.battery().value());
        List<TimeLimit> limits = run.untilVolts().stream()
                .mapToObj(value -> new TimeLimit("asked for: " + Formats.volts(value), Dimension.VOLTAGE, value))
                .toList();
        List<TimeSpan> spans = run.steps().stream()
                .filter(step -> step.durationSeconds() > 0)
                .map(step -> new TimeSpan(
                        stateName(harness, step.state()),
                        step.startSeconds(),
                        step.startSeconds() + step.durationSeconds()))
                .toList();
        ChargeSample last = battery.samples().get(battery.samples().size() - 1);
        List<TimeMark> marks = List.of(new TimeMark(
                Formats.percent(last.chargeFraction()) + " left",
                Dimension.RATIO,
                last.seconds(),
                last.chargeFraction()));
        return Optional.of(new TimeChart(
                run.name() + ": battery " + battery.battery(),
                "Drawn " + Formats.quantity(battery.drawnAmpHours(), Dimension.CHARGE) + ", charged "
                        + Formats.quantity(battery.chargedAmpHours(), Dimension.CHARGE) + " of "
                        + Formats.quantity(battery.capacityAmpHours(), Dimension.CHARGE),
                List.of(
                        new TimeTrace("charge level", Dimension.RATIO, charge, element),
                        new TimeTrace("voltage at its terminals", Dimension.VOLTAGE, volts, element)),
                limits,
                marks,
                spans,
                Map.of(Dimension.RATIO, "Charge level")));
    }

    /** What each load of a state draws while on and on average, and all of them against the alternators' limit. */
    public static Optional<BarChart> loads(Harness harness, LoadTabulation tabulation) {
        if (tabulation.lines().isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble limit =
                tabulation.limitAmps() > 0 ? OptionalDouble.of(tabulation.limitAmps()) : OptionalDouble.empty();
        List<BarRow> rows = new ArrayList<>();
        rows.add(new BarRow(
                "all loads",
                List.of(
                        OptionalDouble.of(tabulation.lines().stream()
                                .mapToDouble(LoadLine::onAmps)
                                .sum()),
                        OptionalDouble.of(tabulation.continuousAmps())),
                limit,
                Optional.empty()));
        tabulation.lines().stream()
                .limit(MOST_LOADS)
                .forEach(line -> rows.add(new BarRow(
                        line.component() + " " + line.name(),
                        List.of(OptionalDouble.of(line.onAmps()), OptionalDouble.of(line.amps())),
                        OptionalDouble.empty(),
                        Optional.of(line.component().value()))));
        return Optional.of(new BarChart(
                "Loads of " + stateName(harness, tabulation.state()),
                "",
                Dimension.CURRENT,
                List.of("while on", "mean"),
                limit.isPresent() ? "alternators give at most" : "",
                rows));
    }

    private static String stateName(Harness harness, StateId id) {
        return harness.states().find(id).map(state -> state.name()).orElse(id.value());
    }
}
