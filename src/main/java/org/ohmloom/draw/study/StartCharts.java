package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ohmloom.draw.chart.TimeChart;
import org.ohmloom.draw.chart.TimeLimit;
import org.ohmloom.draw.chart.TimeMark;
import org.ohmloom.draw.chart.TimeTrace;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.solve.run.StartUp;
import org.ohmloom.solve.run.StarterTrace;
import org.ohmloom.solve.run.SupplySag;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;

/** Voltages and currents over time while something starts. */
public final class StartCharts {

    /** Supplies shown: the ones that come nearest to what they need. */
    private static final int MOST_SAGS = 3;

    private static final int MOST_STARTERS = 2;

    private StartCharts() {}

    /** The chart of a run; empty for one that never got going. */
    public static Optional<TimeChart> of(Harness harness, StartUp run) {
        if (run.seconds().size() < 2) {
            return Optional.empty();
        }
        List<TimeTrace> traces = new ArrayList<>();
        List<TimeLimit> limits = new ArrayList<>();
        List<TimeMark> marks = new ArrayList<>();
        List<SupplySag> sags = run.sags().stream().limit(MOST_SAGS).toList();
        for (SupplySag sag : sags) {
            traces.add(trace("at " + label(harness, sag.id()), Dimension.VOLTAGE, run, sag.volts(), sag.id()));
        }
        List<StarterTrace> starters = run.starters().stream()
                .sorted(Comparator.comparingDouble(StarterTrace::peakAmps).reversed())
                .limit(MOST_STARTERS)
                .toList();
        if (sags.size() < MOST_SAGS) {
            starters.stream()
                    .limit(1)
                    .forEach(starter -> traces.add(trace(
                            "at " + label(harness, starter.id()),
                            Dimension.VOLTAGE,
                            run,
                            starter.volts(),
                            starter.id())));
        }
        currents(harness, run, starters, traces);
        minimums(harness, sags)
                .forEach((volts, words) -> limits.add(
                        new TimeLimit(words + " down to " + Formats.volts(volts), Dimension.VOLTAGE, volts)));
        sags.stream()
                .findFirst()
                .ifPresent(sag -> marks.add(new TimeMark(
                        Formats.volts(sag.lowestVolts()) + " at " + Formats.seconds(sag.lowestSeconds()),
                        Dimension.VOLTAGE,
                        sag.lowestSeconds(),
                        sag.lowestVolts())));
        return Optional.of(TimeChart.of(title(harness, run), subtitle(harness, run), traces, limits, marks));
    }

    /** What the run shows: "Left fan starts". */
    public static String title(Harness harness, StartUp run) {
        return run.starter()
                .map(starter -> name(harness, starter) + " (" + starter + ") starts")
                .orElse("Everything starts at once (" + run.starters().size() + " things)");
    }

    private static String subtitle(Harness harness, StartUp run) {
        String state = harness.states()
                .find(run.state())
                .map(each -> each.name())
                .orElse(run.state().value());
        return state + ", everything else running";
    }

    private static void currents(Harness harness, StartUp run, List<StarterTrace> largest, List<TimeTrace> traces) {
        if (run.starters().size() > MOST_STARTERS) {
            List<Double> sum = new ArrayList<>();
            for (int k = 0; k < run.seconds().size(); k++) {
                int at = k;
                sum.add(run.starters().stream()
                        .mapToDouble(starter -> starter.amps().get(at))
                        .sum());
            }
            traces.add(trace("current of all that starts", Dimension.CURRENT, run, sum, Optional.empty()));
            return;
        }
        largest.forEach(starter -> traces.add(trace(
                "current of " + label(harness, starter.id()), Dimension.CURRENT, run, starter.amps(), starter.id())));
    }

    /** Least voltages with the names of what needs them, each voltage once. */
    private static Map<Double, String> minimums(Harness harness, List<SupplySag> sags) {
        return sags.stream()
                .filter(sag -> sag.minimumVolts().isPresent())
                .collect(Collectors.toMap(
                        sag -> sag.minimumVolts().getAsDouble(),
                        sag -> sag.id() + " works",
                        (one, other) -> one.replace(" works", "") + ", " + other.replace(" works", "") + " work",
                        LinkedHashMap::new));
    }

    private static TimeTrace trace(
            String label, Dimension dimension, StartUp run, List<Double> values, ComponentId element) {
        return trace(label, dimension, run, values, Optional.of(element.value()));
    }

    private static TimeTrace trace(
            String label, Dimension dimension, StartUp run, List<Double> values, Optional<String> element) {
        List<TimeTrace.Sample> samples = new ArrayList<>();
        for (int k = 0; k < run.seconds().size(); k++) {
            samples.add(new TimeTrace.Sample(run.seconds().get(k), values.get(k)));
        }
        return new TimeTrace(label, dimension, samples, element);
    }

    private static String label(Harness harness, ComponentId id) {
        return id + " " + name(harness, id);
    }

    private static String name(Harness harness, ComponentId id) {
        return harness.components().find(id).map(found -> found.name()).orElse(id.value());
    }
}
