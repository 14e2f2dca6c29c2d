package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;

/** Draws every wire in its bundle, each at its own place in every run and at every breakout it turns at. */
final class Strands {

    private static final double CASING_MM = 0.9;

    /** How much of its place in a bundle a wire may take, so that it stays apart from its neighbours. */
    private static final double MOST_FILLED = 0.9;

    private final Harness harness;
    private final Doors doors;
    private final Map<String, List<WireId>> wiresOf;
    private final Figures figures;
    private final List<Trace> traces;
    private final StrandNames names;
    private final Map<BreakoutId, List<WireId>> turning;

    Strands(
            Harness harness,
            Doors doors,
            Map<String, List<WireId>> wiresOf,
            Figures figures,
            List<Trace> traces,
            StrandNames names) {
        this.harness = harness;
        this.doors = doors;
        this.wiresOf = wiresOf;
        this.figures = figures;
        this.traces = List.copyOf(traces);
        this.names = names;
        this.turning = turning();
    }

    /** Wires that go up or down at each breakout, in the order of its bundle. */
    private Map<BreakoutId, List<WireId>> turning() {
        Map<BreakoutId, List<WireId>> found = new LinkedHashMap<>();
        for (Trace trace : traces) {
            for (int k = 0; k < trace.passed().size(); k++) {
                if (trace.turns(k)) {
                    List<WireId> there = found.computeIfAbsent(trace.passed().get(k), each -> new ArrayList<>());
                    if (!there.contains(trace.wire())) {
                        there.add(trace.wire());
                    }
                }
            }
        }
        found.forEach((joint, wires) -> {
            List<WireId> order = wiresOf.getOrDefault(joint.value(), List.of());
            wires.sort(Comparator.comparingInt(order::indexOf));
        });
        return found;
    }

    /** The wires themselves. */
    List<Item> items() {
        return traces.stream().flatMap(trace -> items(trace).stream()).toList();
    }

    /** The body of the bundle where wires go up or down at a breakout. */
    List<Item> bars(Ink ink, double narrowerMm) {
        List<Item> items = new ArrayList<>();
        for (Trace trace : traces) {
            for (int k = 0; k < trace.passed().size(); k++) {
                if (trace.turns(k)) {
                    BreakoutId joint = trace.passed().get(k);
                    double x = bar(joint, trace.wire());
                    Point from = new Point(x, y(trace.levels().get(k), trace.wire()));
                    Point to = new Point(x, y(trace.levels().get(k + 1), trace.wire()));
                    double width = Thickness.pitchMm(
                                    turning.getOrDefault(joint, List.of()).size())
                            + CASING_MM;
                    Line line = Line.of(width - narrowerMm, ink, from, to);
                    items.add(Item.of(Layer.BUNDLES, line, joint.value(), figures.say("breakout", joint)));
                }
            }
        }
        return items;
    }

    /** A wire that no segment leads to the end of: a plain line, so that it can be seen and picked. */
    Optional<Item> direct(Wire wire, String from, String to) {
        return doors.of(from).flatMap(one -> doors.of(to)
                .filter(other -> !other.equals(one))
                .map(other -> item(wire.id(), List.of(one, other), 1)));
    }

    private List<Item> items(Trace trace) {
        List<Point> points = new ArrayList<>();
        int most = 1;
        for (int k = 0; k < trace.levels().size(); k++) {
            Trace.Level level = trace.levels().get(k);
            double y = y(level, trace.wire());
            most = Math.max(most, count(level.key()));
            if (k > 0 && k <= trace.passed().size()) {
                points.add(new Point(bar(trace.passed().get(k - 1), trace.wire()), y));
            }
            level.xMm().ifPresent(x -> points.add(new Point(x, y)));
            if (k < trace.passed().size()) {
                points.add(new Point(bar(trace.passed().get(k), trace.wire()), y));
            }
        }
        List<Point> distinct = corners(points);
        if (distinct.size() < 2) {
            return List.of();
        }
        Item line = item(trace.wire(), distinct, most);
        List<Item> all = new ArrayList<>(List.of(line));
        all.addAll(names.of(
                trace.wire(),
                distinct,
                Thickness.pitchMm(most),
                line.description().orElse("")));
        return all;
    }

    /** The points without repetitions and without those half way along a level or upright line. */
    private static List<Point> corners(List<Point> points) {
        List<Point> corners = new ArrayList<>();
        for (Point point : points) {
            int last = corners.size() - 1;
            if (last >= 0 && corners.get(last).distanceMm(point) < 1e-9) {
                continue;
            }
            if (last >= 1 && corners.get(last).distanceMm(corners.get(last - 1), point) < 1e-9) {
                corners.remove(last);
            }
            corners.add(point);
        }
        return corners;
    }

    private double y(Trace.Level level, WireId wire) {
        return level.yMm() + offset(wiresOf.getOrDefault(level.key(), List.of()), wire);
    }

    private double bar(BreakoutId joint, WireId wire) {
        List<WireId> turn = turning.getOrDefault(joint, List.of());
        List<WireId> lane = turn.contains(wire) ? turn : wiresOf.getOrDefault(joint.value(), List.of());
        return doors.joint(joint) + offset(lane, wire);
    }

    private int count(String key) {
        return wiresOf.getOrDefault(key, List.of()).size();
    }

    private static double offset(List<WireId> wires, WireId wire) {
        int rank = wires.indexOf(wire);
        return rank < 0 ? 0 : Thickness.offsetMm(rank, wires.size());
    }

    private Item item(WireId id, List<Point> points, int most) {
        Wire wire = harness.wires().get(id);
        SignalLook look = SignalLook.of(wire.signalClass());
        double widthMm = Thickness.strandMm(most);
        Line line = figures.step(id)
                .map(step -> new Line(
                        points,
                        Math.min(widthMm * step.widthRatio(), Thickness.pitchMm(most) * MOST_FILLED),
                        step.ink(),
                        LinePattern.CONTINUOUS))
                .orElseGet(() -> new Line(points, widthMm, look.ink(), look.pattern()));
        return Item.of(Layer.WIRES, line, id.value(), describe(wire, figures));
    }

    /** A wire in plain words. */
    static String describe(Wire wire, Figures figures) {
        org.ohmloom.words.Text signal = SignalLook.of(wire.signalClass()).word();
        String from = wire.from().text();
        String to = wire.to().text();
        return wire.circuit()
                        .map(circuit -> figures.say("wire.of-circuit", wire.id(), signal, circuit, from, to))
                        .orElseGet(() -> figures.say("wire.told", wire.id(), signal, from, to))
                + figures.gauge(wire.id())
                        .map(gauge -> ", " + figures.units().size(gauge))
                        .orElse("")
                + figures.measured(wire.id()).map(number -> ", " + number).orElse("");
    }
}
