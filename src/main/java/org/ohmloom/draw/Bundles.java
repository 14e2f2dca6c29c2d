package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;

/** Which wires lie in which tie, pass which breakout and arrive at which end: by signal class, then by identity. */
final class Bundles {

    private Bundles() {}

    /** Wires by id of segment, breakout, connector, component, splice or ground point. */
    static Map<String, List<WireId>> of(Harness harness, SortedMap<WireId, WirePath> paths) {
        Map<String, Set<WireId>> wires = new TreeMap<>();
        for (WirePath path : paths.values()) {
            for (Tie tie : path.ties()) {
                add(wires, tie.id(), path.wire());
            }
            for (BreakoutId joint : path.joints()) {
                add(wires, joint.value(), path.wire());
            }
            for (Spot spot : List.of(path.from(), path.to())) {
                if (spot.place() instanceof Place.AtBreakout) {
                    add(wires, spot.element(), path.wire());
                }
            }
        }
        Map<WireId, Integer> ranks = ranks(harness);
        Map<String, List<WireId>> sorted = new TreeMap<>();
        wires.forEach((key, there) -> {
            List<WireId> each = new ArrayList<>(there);
            each.sort(Comparator.comparingInt(wire -> ranks.getOrDefault(wire, 0)));
            sorted.put(key, each);
        });
        return Collections.unmodifiableMap(sorted);
    }

    /** The order of all wires. */
    private static Map<WireId, Integer> ranks(Harness harness) {
        List<Wire> wires = harness.wires().all().stream()
                .sorted(Comparator.comparing(Wire::signalClass).thenComparing(Wire::id))
                .toList();
        Map<WireId, Integer> ranks = new HashMap<>();
        wires.forEach(wire -> ranks.put(wire.id(), ranks.size()));
        return ranks;
    }

    private static void add(Map<String, Set<WireId>> wires, String key, WireId wire) {
        wires.computeIfAbsent(key, each -> new LinkedHashSet<>()).add(wire);
    }
}
