package org.ohmloom.draw.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

/** Finds places for labels: inside the plot, never on another label, and off the lines where that can be. */
final class Labels {

    private static final double APART_MM = 0.5;

    /** Costs of a place, in millimetres of being away from where it would stand best. */
    private static final double CROSSING = 120;

    /**
     * A place where a label could stand.
     *
     * @param extent rectangle it would cover
     * @param cost   how far from ideal it is, mm
     */
    record Place(Extent extent, double cost) {}

    /**
     * A label's place.
     *
     * @param extent rectangle it covers
     * @param clear  whether no line runs through it
     */
    record Found(Extent extent, boolean clear) {}

    private final Extent room;
    private final List<Extent> taken = new ArrayList<>();
    private final List<List<Point>> lines = new ArrayList<>();

    Labels(Extent room) {
        this.room = room;
    }

    /** Adds a line that labels should keep off. */
    void avoid(List<Point> line) {
        lines.add(line);
    }

    /** Adds a rectangle that no label may touch. */
    void take(Extent extent) {
        taken.add(extent);
    }

    /** The best of some places, taken from now on; empty when none is free. */
    Optional<Found> find(List<Place> places) {
        Optional<Place> best = places.stream()
                .filter(place -> room.contains(place.extent()))
                .filter(place -> taken.stream()
                        .noneMatch(other -> other.overlaps(place.extent().grown(APART_MM))))
                .min(Comparator.comparingDouble(place -> place.cost() + CROSSING * crossings(place.extent())));
        best.ifPresent(place -> take(place.extent()));
        return best.map(place -> new Found(place.extent(), crossings(place.extent()) == 0));
    }

    private long crossings(Extent extent) {
        return lines.stream().filter(line -> crosses(line, extent)).count();
    }

    private static boolean crosses(List<Point> line, Extent extent) {
        for (int k = 1; k < line.size(); k++) {
            if (Clip.segment(line.get(k - 1), line.get(k), extent).isPresent()) {
                return true;
            }
        }
        return false;
    }
}
