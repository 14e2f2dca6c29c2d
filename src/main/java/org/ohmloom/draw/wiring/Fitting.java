package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;
import org.ohmloom.model.Wire;

/** Circuits laid out, each no higher than a sheet: one that is too high is drawn in parts, upper half and lower half. */
final class Fitting {

    /** Share of the rows a sheet has that circuits drawn as one may fill. */
    private static final double SHARE = 0.75;

    private static final int LEAST = 8;

    private final Wiring wiring;
    private final Headings headings;
    private final WireWords words;
    private final double roomMm;

    Fitting(Wiring wiring, Headings headings, WireWords words, double roomMm) {
        this.wiring = wiring;
        this.headings = headings;
        this.words = words;
        this.roomMm = roomMm;
    }

    List<CircuitLayout> all() {
        int most = Math.max(LEAST, (int) (SHARE * roomMm / Stand.ROW_MM));
        List<CircuitLayout> layouts = new ArrayList<>();
        for (WiringCircuit circuit : new WiringCircuits(wiring.symbols(), most).all()) {
            List<CircuitLayout> parts = new ArrayList<>();
            add(circuit, parts);
            if (parts.size() == 1) {
                layouts.add(parts.get(0));
                continue;
            }
            for (int k = 0; k < parts.size(); k++) {
                List<Wire> wires = parts.get(k).circuit().wires();
                layouts.add(layout(new WiringCircuit(names(circuit, wires), wires, k + 1, parts.size())));
            }
        }
        return layouts;
    }

    /** More sheets than this are not needed: two wires to a sheet at least. */
    private int mostSheets() {
        return Math.max(10, wiring.symbols().harness().wires().size() / 2);
    }

    /** The names of those circuits that have a wire in a part. */
    private static List<String> names(WiringCircuit circuit, List<Wire> wires) {
        List<String> names = circuit.names().stream()
                .filter(name -> wires.stream().anyMatch(wire -> wire.circuit()
                        .map(String::strip)
                        .filter(name::equals)
                        .isPresent()))
                .toList();
        return names.isEmpty() ? circuit.names() : names;
    }

    private CircuitLayout layout(WiringCircuit circuit) {
        return new CircuitLayout(circuit, wiring, headings, words, Places.unknown(mostSheets()));
    }

    private void add(WiringCircuit circuit, List<CircuitLayout> parts) {
        CircuitLayout layout = layout(circuit);
        double high = layout.bounds().map(Extent::heightMm).orElse(0.0);
        if (high <= roomMm || circuit.wires().size() == 1) {
            parts.add(layout);
            return;
        }
        Map<Wire, Double> heights = heights(layout);
        List<Wire> sorted = new ArrayList<>(circuit.wires());
        sorted.sort(Comparator.comparingDouble(wire -> heights.getOrDefault(wire, 0.0)));
        int half = half(sorted, heights);
        for (List<Wire> wires : List.of(sorted.subList(0, half), sorted.subList(half, sorted.size()))) {
            Set<Wire> these = Set.copyOf(wires);
            List<Wire> ordered =
                    circuit.wires().stream().filter(these::contains).toList();
            add(new WiringCircuit(circuit.names(), ordered, 1, 1), parts);
        }
    }

    /** How high each wire stands: that of the load it belongs to, so that its wires stay together, else its own. */
    private Map<Wire, Double> heights(CircuitLayout layout) {
        Map<Wire, Double> heights = new HashMap<>();
        Map<String, Double> ofPair = new HashMap<>();
        layout.lines().forEach((link, points) -> link.wire().ifPresent(wire -> {
            for (String end : List.of(link.from(), link.to())) {
                Stand stand = layout.stands().get(end);
                if (stand != null && stand.symbol().orElseThrow().kind() == Symbol.Kind.LOAD) {
                    heights.put(wire, stand.topMm());
                    pairs(wire).forEach(pair -> ofPair.put(pair, stand.topMm()));
                }
            }
        }));
        layout.lines().forEach((link, points) -> link.wire().ifPresent(wire -> {
            double own = pairs(wire).stream()
                    .filter(ofPair::containsKey)
                    .findFirst()
                    .map(ofPair::get)
                    .orElse(meanMm(points));
            heights.putIfAbsent(wire, own);
        }));
        return heights;
    }

    /** The pairs of cavities of in-line connectors a wire ends in. */
    private List<String> pairs(Wire wire) {
        return Stream.of(wiring.symbols().from(wire), wiring.symbols().to(wire))
                .filter(end -> wiring.symbols().get(end.symbol()).kind() == Symbol.Kind.CONNECTOR)
                .map(end -> WiringCircuits.pair(wiring.symbols().get(end.symbol()), end))
                .toList();
    }

    /** About half of the wires, none of equal height torn apart where that can be. */
    private static int half(List<Wire> sorted, Map<Wire, Double> heights) {
        int middle = sorted.size() / 2;
        for (int off = 0; off < middle; off++) {
            for (int k : new int[] {middle - off, middle + off}) {
                double above = heights.getOrDefault(sorted.get(k - 1), 0.0);
                if (heights.getOrDefault(sorted.get(k), 0.0) > above) {
                    return k;
                }
            }
        }
        return middle;
    }

    private static double meanMm(List<Point> points) {
        return (points.get(0).yMm() + points.get(points.size() - 1).yMm()) / 2;
    }
}
