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
import org.ohmloom.words.Text;

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
                .mapToObj(value ->
                        new TimeLimit(StudyTexts.text("charge.asked", Formats.volts(value)), Dimension.VOLTAGE, value))
                .toList();
        List<TimeSpan> spans = run.steps().stream()
                .filter(step -> step.durationSeconds() > 0)
                .map(step -> new TimeSpan(
                        Text.of(stateName(harness, step.state())),
                        step.startSeconds(),
                        step.startSeconds() + step.durationSeconds()))
                .toList();
        ChargeSample last = battery.samples().get(battery.samples().size() - 1);
        List<TimeMark> marks = List.of(new TimeMark(
                StudyTexts.text("charge.left", Formats.percent(last.chargeFraction())),
                Dimension.RATIO,
                last.seconds(),
                last.chargeFraction()));
        return Optional.of(new TimeChart(
                StudyTexts.text("charge", run.name(), battery.battery()),
                StudyTexts.text(
                        "charge.about",
                        Formats.quantity(battery.drawnAmpHours(), Dimension.CHARGE),
                        Formats.quantity(battery.chargedAmpHours(), Dimension.CHARGE),
                        Formats.quantity(battery.capacityAmpHours(), Dimension.CHARGE)),
                List.of(
                        new TimeTrace(StudyTexts.text("charge.level"), Dimension.RATIO, charge, element),
                        new TimeTrace(StudyTexts.text("charge.volts"), Dimension.VOLTAGE, volts, element)),
                limits,
                marks,
                spans,
                Map.of(Dimension.RATIO, StudyTexts.text("charge.axis"))));
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
                StudyTexts.text("loads.all"),
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
                        Text.of(line.component() + " " + line.name()),
                        List.of(OptionalDouble.of(line.onAmps()), OptionalDouble.of(line.amps())),
                        OptionalDouble.empty(),
                        Optional.of(line.component().value()))));
        return Optional.of(new BarChart(
                StudyTexts.text("loads", stateName(harness, tabulation.state())),
                Text.NONE,
                Dimension.CURRENT,
                List.of(StudyTexts.text("loads.on"), StudyTexts.text("mean")),
                limit.isPresent() ? StudyTexts.text("loads.limit") : Text.NONE,
                rows));
    }

    private static String stateName(Harness harness, StateId id) {
        return harness.states().find(id).map(state -> state.name()).orElse(id.value());
    }
}
