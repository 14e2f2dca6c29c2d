package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.WireId;

/** Which wires lie in which tie, pass which breakout and arrive at which end: by signal class, then by identity. */
final class Bundles {

    private Bundles() {}

    /** Wires by id of segment, breakout, connector, component, splice or ground point. */
    static Map<String, List<WireId>> of(Harness harness, SortedMap<WireId, WirePath> paths) {
        Map<String, List<WireId>> wires = new TreeMap<>();
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
        Comparator<WireId> byClass =
                Comparator.comparing(wire -> harness.wires().get(wire).signalClass());
        wires.values().forEach(each -> each.sort(byClass.thenComparing(Comparator.naturalOrder())));
        return Collections.unmodifiableMap(wires);
    }

    private static void add(Map<String, List<WireId>> wires, String key, WireId wire) {
        List<WireId> there = wires.computeIfAbsent(key, each -> new ArrayList<>());
        if (!there.contains(wire)) {
            there.add(wire);
        }
    }
}
