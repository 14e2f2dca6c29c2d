package org.ohmloom.draw.chart;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.units.Dimension;
import org.ohmloom.words.Text;

/**
 * Values over time, of one or two kinds: voltages at the left axis and currents at the right one, say.
 *
 * @param title    what it shows
 * @param subtitle under which conditions; may be empty
 * @param traces   the values; at least one with a sample, of at most two dimensions
 * @param limits   levels they are held against
 * @param marks    points to look at
 * @param spans    stretches of time with names, in order
 * @param headings names of the axes where the dimension's own does not say it
 */
public record TimeChart(
        Text title,
        Text subtitle,
        List<TimeTrace> traces,
        List<TimeLimit> limits,
        List<TimeMark> marks,
        List<TimeSpan> spans,
        Map<Dimension, Text> headings) {

    private static final double ROUNDING = 1e-9;

    /** Room beyond the values, as a share of what they span. */
    private static final double ROOM = 0.02;

    public TimeChart {
        traces = traces.stream().filter(trace -> !trace.samples().isEmpty()).toList();
        limits = List.copyOf(limits);
        marks = List.copyOf(marks);
        spans = List.copyOf(spans);
        headings = Map.copyOf(headings);
        if (traces.isEmpty() || dimensions(traces).size() > 2) {
            throw new IllegalArgumentException(
                    "a time chart shows values of one or two dimensions, had " + dimensions(traces) + " in " + title);
        }
    }

    /** A chart without spans and with the usual names of the axes. */
    public static TimeChart of(
            Text title, Text subtitle, List<TimeTrace> traces, List<TimeLimit> limits, List<TimeMark> marks) {
        return new TimeChart(title, subtitle, traces, limits, marks, List.of(), Map.of());
    }

    /** Lays the chart out on a rectangle; texts keep their height whatever its size. */
    public Scene scene(SceneFonts fonts, double widthMm, double heightMm) {
        Extent size = new Extent(0, 0, widthMm, heightMm);
        TimeLayout first = new TimeLayout(this, size, fonts, List.of());
        List<Integer> homeless = first.draw();
        if (homeless.isEmpty()) {
            return first.scene();
        }
        TimeLayout second = new TimeLayout(this, size, fonts, homeless);
        second.draw();
        return second.scene();
    }

    static List<Dimension> dimensions(List<TimeTrace> traces) {
        return new ArrayList<>(
                new LinkedHashSet<>(traces.stream().map(TimeTrace::dimension).toList()));
    }

    /** The axis of the left side or the right one, by index. */
    Optional<Axis> axis(int index, Optional<Axis> beside, int mostSteps) {
        List<Dimension> kinds = dimensions(traces);
        if (index >= kinds.size()) {
            return Optional.empty();
        }
        Dimension dimension = kinds.get(index);
        double least = values(dimension).min(Double::compare).orElse(0.0);
        double most = values(dimension).max(Double::compare).orElse(1.0);
        // A level at the very end of an axis would lie on the frame.
        double room = ROOM * (most - least);
        double lowest = lowest(dimension, least - room, least);
        double highest = most + room;
        Axis axis = beside.map(other -> Axes.beside(other, dimension, lowest, highest))
                .orElseGet(() -> Axes.linear(dimension, lowest, highest, mostSteps));
        Text heading = headings.getOrDefault(dimension, axis.title());
        return Optional.of(new Axis(heading, axis.unit(), axis.from(), axis.to(), axis.logarithmic(), axis.ticks()));
    }

    private double lowest(Dimension dimension, double lower, double least) {
        boolean held = limits.stream().anyMatch(limit -> limit.dimension() == dimension && limit.value() == least);
        return held && least > 0 ? Math.max(0, lower) : least;
    }

    Axis timeAxis(int mostSteps) {
        double from = times().min(Double::compare).orElse(0.0);
        double to = times().max(Double::compare).orElse(1.0);
        Axis axis = Axes.linear(Dimension.TIME, from, to, mostSteps);
        double end = to > from ? to : axis.to();
        List<Tick> ticks = axis.ticks().stream()
                .filter(tick -> tick.value() >= from && tick.value() <= end * (1 + ROUNDING))
                .toList();
        return new Axis(axis.title(), axis.unit(), from, end, false, ticks);
    }

    private Stream<Double> times() {
        return Stream.concat(
                traces.stream().flatMap(trace -> trace.samples().stream()).map(TimeTrace.Sample::seconds),
                spans.stream().flatMap(span -> Stream.of(span.fromSeconds(), span.toSeconds())));
    }

    private Stream<Double> values(Dimension dimension) {
        return Stream.of(
                        traces.stream()
                                .filter(trace -> trace.dimension() == dimension)
                                .flatMap(trace -> trace.samples().stream())
                                .map(TimeTrace.Sample::value),
                        limits.stream()
                                .filter(limit -> limit.dimension() == dimension)
                                .map(TimeLimit::value),
                        marks.stream()
                                .filter(mark -> mark.dimension() == dimension)
                                .map(TimeMark::value))
                .flatMap(each -> each);
    }
}
