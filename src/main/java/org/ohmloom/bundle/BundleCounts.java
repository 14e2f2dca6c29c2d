package org.ohmloom.bundle;

import java.util.Collections;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;

/**
 * The wires that lie in each bundle segment, cores of cables and shields among them.
 *
 * @param wires wires by segment; every segment of the harness has an entry
 */
public record BundleCounts(SortedMap<SegmentId, SortedSet<WireId>> wires) {

    public BundleCounts {
        SortedMap<SegmentId, SortedSet<WireId>> copy = new TreeMap<>();
        wires.forEach((segment, ids) -> copy.put(segment, Collections.unmodifiableSortedSet(new TreeSet<>(ids))));
        wires = Collections.unmodifiableSortedMap(copy);
    }

    /** Counts the wires of a harness that have a way; a wire passes a segment once however its way runs. */
    public static BundleCounts of(Harness harness, Routes routes) {
        SortedMap<SegmentId, SortedSet<WireId>> wires = new TreeMap<>();
        harness.segments().ids().forEach(segment -> wires.put(segment, new TreeSet<>()));
        for (Wire wire : harness.wires().all()) {
            routes.of(wire.id()).ifPresent(route -> route.segments()
                    .forEach(segment -> wires.get(segment).add(wire.id())));
        }
        return new BundleCounts(wires);
    }

    /** The wires in a segment; none for a segment the harness does not have. */
    public SortedSet<WireId> in(SegmentId segment) {
        return wires.getOrDefault(segment, Collections.emptySortedSet());
    }

    /** How many wires lie in a segment, 0 or more. */
    public int count(SegmentId segment) {
        return in(segment).size();
    }
}
