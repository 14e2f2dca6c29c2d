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
import org.ohmloom.words.Text;

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
            traces.add(trace(
                    StudyTexts.text("start.at", label(harness, sag.id())),
                    Dimension.VOLTAGE,
                    run,
                    sag.volts(),
                    sag.id()));
        }
        List<StarterTrace> starters = run.starters().stream()
                .sorted(Comparator.comparingDouble(StarterTrace::peakAmps).reversed())
                .limit(MOST_STARTERS)
                .toList();
        if (sags.size() < MOST_SAGS) {
            starters.stream()
                    .limit(1)
                    .forEach(starter -> traces.add(trace(
                            StudyTexts.text("start.at", label(harness, starter.id())),
                            Dimension.VOLTAGE,
                            run,
                            starter.volts(),
                            starter.id())));
        }
        currents(harness, run, starters, traces);
        minimums(harness, sags)
                .forEach((volts, ids) -> limits.add(new TimeLimit(
                        StudyTexts.text("start.works", ids.size(), Text.joined(", ", ids), Formats.volts(volts)),
                        Dimension.VOLTAGE,
                        volts)));
        sags.stream()
                .findFirst()
                .ifPresent(sag -> marks.add(new TimeMark(
                        StudyTexts.text(
                                "start.lowest", Formats.volts(sag.lowestVolts()), Formats.seconds(sag.lowestSeconds())),
                        Dimension.VOLTAGE,
                        sag.lowestSeconds(),
                        sag.lowestVolts())));
        return Optional.of(TimeChart.of(title(harness, run), subtitle(harness, run), traces, limits, marks));
    }

    /** What the run shows: "Left fan starts". */
    public static Text title(Harness harness, StartUp run) {
        return run.starter()
                .map(starter -> StudyTexts.text("start", name(harness, starter), starter))
                .orElse(StudyTexts.text("start.everything", run.starters().size()));
    }

    private static Text subtitle(Harness harness, StartUp run) {
        String state = harness.states()
                .find(run.state())
                .map(each -> each.name())
                .orElse(run.state().value());
        return StudyTexts.text("start.about", state);
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
            traces.add(trace(StudyTexts.text("start.all"), Dimension.CURRENT, run, sum, Optional.empty()));
            return;
        }
        largest.forEach(starter -> traces.add(trace(
                StudyTexts.text("start.current", label(harness, starter.id())),
                Dimension.CURRENT,
                run,
                starter.amps(),
                starter.id())));
    }

    /** Least voltages with the names of what needs them, each voltage once. */
    private static Map<Double, List<Text>> minimums(Harness harness, List<SupplySag> sags) {
        return sags.stream()
                .filter(sag -> sag.minimumVolts().isPresent())
                .collect(Collectors.groupingBy(
                        sag -> sag.minimumVolts().getAsDouble(),
                        LinkedHashMap::new,
                        Collectors.mapping(sag -> Text.of(sag.id()), Collectors.toList())));
    }

    private static TimeTrace trace(
            Text label, Dimension dimension, StartUp run, List<Double> values, ComponentId element) {
        return trace(label, dimension, run, values, Optional.of(element.value()));
    }

    private static TimeTrace trace(
            Text label, Dimension dimension, StartUp run, List<Double> values, Optional<String> element) {
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
