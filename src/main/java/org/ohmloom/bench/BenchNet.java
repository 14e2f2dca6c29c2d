package org.ohmloom.bench;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.Wire;

/**
 * Conductors that are one piece of metal while everything is unplugged.
 *
 * @param id       its number on the sheet, as "N3"
 * @param wires    its wires in the order of their ids
 * @param paths    resistance from the first end to every other end, in the order of the ends
 * @param ends     places where a probe can touch, in the order of the drawing's ids
 */
public record BenchNet(String id, List<Wire> wires, List<BenchEnd> ends, SortedMap<BenchEnd, Path> paths) {

    /**
     * What lies between the first end of a net and another end.
     *
     * @param wireOhms  resistance of the wires at 20 C by their listed maximum, ohm; empty where a length is unknown
     * @param jointOhms resistance of splices and of the contacts at both ends, ohm
     */
    public record Path(OptionalDouble wireOhms, double jointOhms) {

        /** Both together at a conductor temperature whose resistance ratio to 20 C is given, ohm. */
        public OptionalDouble ohms(double ratio) {
            return wireOhms.isPresent()
                    ? OptionalDouble.of(wireOhms.getAsDouble() * ratio + jointOhms)
                    : OptionalDouble.empty();
        }
    }

    public BenchNet {
        wires = List.copyOf(wires);
        ends = List.copyOf(ends);
        paths = Collections.unmodifiableSortedMap(new TreeMap<>(paths));
    }
}
