package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;

/** Finds the shortest way of every wire along the bundle segments. Dijkstra; ties of equal length by identity. */
final class WirePaths {

    private final Harness harness;
    private final Ties ties;

    WirePaths(Harness harness, Ties ties) {
        this.harness = harness;
        this.ties = ties;
    }

    /** The ways of all wires that have one. */
    SortedMap<WireId, WirePath> all() {
        SortedMap<WireId, WirePath> paths = new TreeMap<>();
        for (Wire wire : harness.wires().all()) {
            Optional<Spot> from = Spot.of(harness, wire.from());
            Optional<Spot> to = Spot.of(harness, wire.to());
            if (from.isPresent() && to.isPresent()) {
                path(wire.id(), from.get(), to.get()).ifPresent(path -> paths.put(wire.id(), path));
            }
        }
        return paths;
    }

    private Optional<WirePath> path(WireId wire, Spot from, Spot to) {
        if (from.place() instanceof Place.OnSegment one
                && to.place() instanceof Place.OnSegment other
                && one.segment().equals(other.segment())) {
            return Optional.of(new WirePath(wire, from, to, List.of(tie(one)), List.of()));
        }
        Map<BreakoutId, Double> starts = doors(from.place());
        Map<BreakoutId, Double> goals = doors(to.place());
        Map<BreakoutId, Tie> cameBy = new LinkedHashMap<>();
        Map<BreakoutId, Double> reach = reach(starts, cameBy);
        Optional<BreakoutId> door = goals.keySet().stream()
                .filter(reach::containsKey)
                .min(Comparator.comparing(
                                (BreakoutId each) -> reach.getOrDefault(each, 0.0) + goals.getOrDefault(each, 0.0))
                        .thenComparing(Comparator.naturalOrder()));
        if (door.isEmpty()) {
            return Optional.empty();
        }
        List<Tie> way = new ArrayList<>();
        List<BreakoutId> joints = new ArrayList<>(List.of(door.get()));
        Tie by = cameBy.get(door.get());
        while (by != null) {
            way.add(0, by);
            joints.add(0, by.other(joints.get(0)));
            by = cameBy.get(joints.get(0));
        }
        if (from.place() instanceof Place.OnSegment on) {
            way.add(0, tie(on));
        }
        if (to.place() instanceof Place.OnSegment on) {
            way.add(tie(on));
        }
        return Optional.of(new WirePath(wire, from, to, way, joints));
    }

    private Map<BreakoutId, Double> reach(Map<BreakoutId, Double> starts, Map<BreakoutId, Tie> cameBy) {
        Map<BreakoutId, Double> best = new LinkedHashMap<>(starts);
        Map<BreakoutId, Double> done = new LinkedHashMap<>();
        PriorityQueue<Map.Entry<BreakoutId, Double>> waiting =
                new PriorityQueue<>(Comparator.comparing((Map.Entry<BreakoutId, Double> each) -> each.getValue())
                        .thenComparing(Map.Entry::getKey));
        starts.forEach((each, metres) -> waiting.add(Map.entry(each, metres)));
        while (!waiting.isEmpty()) {
            Map.Entry<BreakoutId, Double> next = waiting.remove();
            BreakoutId here = next.getKey();
            if (done.putIfAbsent(here, next.getValue()) != null) {
                continue;
            }
            for (Tie tie : ties.at(here)) {
                double metres = next.getValue() + tie.lengthMetres();
                BreakoutId there = tie.other(here);
                if (tie.segment().isPresent() && metres < best.getOrDefault(there, Double.POSITIVE_INFINITY)) {
                    best.put(there, metres);
                    cameBy.put(there, tie);
                    waiting.add(Map.entry(there, metres));
                }
            }
        }
        return done;
    }

    /** The breakouts a place is reached by, with the way to them. */
    private Map<BreakoutId, Double> doors(Place place) {
        Map<BreakoutId, Double> doors = new LinkedHashMap<>();
        if (place instanceof Place.AtBreakout at) {
            doors.put(at.breakout(), 0.0);
        } else if (place instanceof Place.OnSegment on) {
            BundleSegment segment = harness.segments().get(on.segment());
            doors.put(segment.from(), Math.min(on.distanceMetres(), segment.lengthMetres()));
            doors.put(segment.to(), Math.max(0, segment.lengthMetres() - on.distanceMetres()));
        }
        return doors;
    }

    private static Tie tie(Place.OnSegment on, Harness harness) {
        return Tie.of(harness.segments().get(on.segment()));
    }

    private Tie tie(Place.OnSegment on) {
        return tie(on, harness);
    }
}
