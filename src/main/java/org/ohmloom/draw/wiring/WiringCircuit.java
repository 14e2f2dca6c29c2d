package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ohmloom.model.Wire;

/**
 * What is drawn in one piece: one circuit, or several that share devices, or a part of a large one.
 *
 * @param names names of its circuits
 * @param wires its wires in the order of their ids
 * @param part  which part of a large one it is, from 1
 * @param parts how many parts that has, 1 or more
 */
record WiringCircuit(List<String> names, List<Wire> wires, int part, int parts) {

    WiringCircuit {
        names = List.copyOf(names);
        wires = List.copyOf(wires);
    }

    WiringCircuit with(WiringCircuit other) {
        List<String> all = new ArrayList<>(names);
        other.names.stream().filter(name -> !all.contains(name)).forEach(all::add);
        List<Wire> both = new ArrayList<>(wires);
        both.addAll(other.wires);
        return new WiringCircuit(all, both, 1, 1);
    }

    /** What it is called: the names of its circuits. */
    String title() {
        return capital(String.join(", ", names)) + (parts > 1 ? ", part " + part + " of " + parts : "");
    }

    static String capital(String name) {
        int second = name.offsetByCodePoints(0, 1);
        return name.substring(0, second).toUpperCase(Locale.ROOT) + name.substring(second);
    }
}
