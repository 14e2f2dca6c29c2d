package org.ohmloom.draw.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.units.Dimension;
import org.ohmloom.words.Text;

/**
 * Opening times over currents on logarithmic axes: the band of a protective device, how long conductors withstand each
 * current, start currents, and fault currents as upright lines.
 *
 * @param title    what it shows
 * @param subtitle under which conditions; may be empty
 * @param bands    bands of protective devices; the first is the one looked at, others are drawn as lines only
 * @param curves   lines such as the limit of a conductor or a start current
 * @param currents currents marked by an upright line
 */
public record TimeCurrentChart(
        Text title,
        Text subtitle,
        List<OpeningBand> bands,
        List<TimeCurrentCurve> curves,
        List<CurrentLimit> currents) {

    /** The shortest and the longest time shown, s. */
    static final double SHORTEST_SECONDS = 0.01;

    /** A current less than this is none beside what devices open at, A. */
    private static final double LEAST_AMPS = 1e-3;

    private static final double LONGEST_SECONDS = 1000;
    private static final double ROOM = 1.3;

    /** The labels of the smallest currents stand to their left. */
    private static final double ROOM_LEFT = 2.5;

    public TimeCurrentChart {
        bands = List.copyOf(bands);
        curves = curves.stream().filter(curve -> !curve.points().isEmpty()).toList();
        currents = currents.stream()
                .filter(current -> current.amps() >= LEAST_AMPS && Double.isFinite(current.amps()))
                .toList();
        if (bands.stream().allMatch(band -> band.rows().isEmpty()) && curves.isEmpty() && currents.isEmpty()) {
            throw new IllegalArgumentException("a time-current chart shows something, had nothing in " + title);
        }
    }

    /** Lays the chart out on a rectangle; texts keep their height whatever its size. */
    public Scene scene(SceneFonts fonts, double widthMm, double heightMm) {
        Extent size = new Extent(0, 0, widthMm, heightMm);
        TimeCurrentLayout first = new TimeCurrentLayout(this, size, fonts, List.of());
        List<Key.Entry> homeless = first.draw();
        if (homeless.isEmpty()) {
            return first.scene();
        }
        TimeCurrentLayout second = new TimeCurrentLayout(this, size, fonts, homeless);
        second.draw();
        return second.scene();
    }

    Axis currentAxis() {
        List<Double> amps = new ArrayList<>();
        bands.forEach(band -> band.rows().forEach(row -> amps.add(row.amps())));
        currents.forEach(current -> amps.add(current.amps()));
        curves.forEach(curve -> curve.points().stream()
                .filter(point -> point.seconds() >= SHORTEST_SECONDS && point.seconds() <= LONGEST_SECONDS)
                .forEach(point -> amps.add(point.amps())));
        double least = amps.stream().min(Double::compare).orElse(1.0);
        // A conductor withstands some current for the shortest time shown; how much need not widen the chart.
        double known = Stream.concat(
                        bands.stream().flatMap(band -> band.rows().stream()).map(OpeningBand.Row::amps),
                        currents.stream().map(CurrentLimit::amps))
                .max(Double::compare)
                .orElse(amps.stream().max(Double::compare).orElse(10.0));
        return Axes.logarithmic(Dimension.CURRENT, least / ROOM_LEFT, known * ROOM, true);
    }

    static Axis timeAxis() {
        return Axes.logarithmic(Dimension.TIME, SHORTEST_SECONDS, LONGEST_SECONDS, false);
    }
}
