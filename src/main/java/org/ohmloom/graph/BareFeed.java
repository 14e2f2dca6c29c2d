package org.ohmloom.graph;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.WireId;

/**
 * What one source feeds past no protective device.
 *
 * @param source  the source
 * @param wires   unprotected wires, each with the shortest way from the source up to and over it
 * @param loads   components that draw from an unprotected point: loads, coils, units, sensors, converter inputs
 * @param devices the first protective device on each way
 */
public record BareFeed(
        FeedSource source, SortedMap<WireId, FeedWay> wires, SortedSet<ComponentId> loads, List<FirstDevice> devices) {

    public BareFeed {
        wires = Collections.unmodifiableSortedMap(new TreeMap<>(wires));
        loads = Collections.unmodifiableSortedSet(new TreeSet<>(loads));
        devices = List.copyOf(devices);
    }
}
