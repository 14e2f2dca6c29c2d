package org.ohmloom.review;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Harness;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/** Which wire ends sit in which cavity. */
final class CavityWires {

    /**
     * A cavity with the wires that end in it.
     *
     * @param connector its connector
     * @param cavity    the cavity
     * @param wires     wires in id order, one entry for each end
     */
    record Occupied(Connector connector, Cavity cavity, List<Wire> wires) {
        Occupied {
            wires = List.copyOf(wires);
        }

        /** Whether only one wire end sits there. */
        boolean isSingle() {
            return wires.size() == 1;
        }

        /** The contact chosen for it, if there is one. */
        Optional<ContactPart> contact(Harness harness) {
            return cavity.contact().flatMap(harness.contacts()::find);
        }

        /** How people write it: {@code X1.3}. */
        String text() {
            return connector.id() + "." + cavity.name();
        }
    }

    private CavityWires() {}

    /** All cavities with at least one wire, by connector and cavity in natural order. */
    static List<Occupied> of(Harness harness) {
        SortedMap<String, List<Wire>> wires = new TreeMap<>(NaturalOrder.INSTANCE);
        SortedMap<String, WireEnd.AtCavity> places = new TreeMap<>(NaturalOrder.INSTANCE);
        for (Wire wire : harness.wires().all()) {
            for (WireEnd end : wire.ends()) {
                if (end instanceof WireEnd.AtCavity at) {
                    wires.computeIfAbsent(at.text(), key -> new ArrayList<>()).add(wire);
                    places.put(at.text(), at);
                }
            }
        }
        List<Occupied> occupied = new ArrayList<>();
        for (Map.Entry<String, WireEnd.AtCavity> place : places.entrySet()) {
            Connector connector = harness.connectors().get(place.getValue().connector());
            Cavity cavity = connector.cavity(place.getValue().cavity()).orElseThrow();
            occupied.add(new Occupied(connector, cavity, wires.get(place.getKey())));
        }
        return Collections.unmodifiableList(occupied);
    }
}
