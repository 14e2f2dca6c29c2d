package org.ohmloom.graph;

import java.util.Collections;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;

/**
 * The ways of all wires over the physical harness; a wire without an entry has no way there.
 *
 * @param byWire shortest way of each wire that has one
 */
public record Routes(SortedMap<WireId, Route> byWire) {

    public Routes {
        byWire = Collections.unmodifiableSortedMap(new TreeMap<>(byWire));
    }

    /**
     * The shortest way of every wire whose ends both have a place on the physical harness and are joined by segments.
     * A wire between two places at one breakout has a way of length 0.
     */
    public static Routes of(Harness harness) {
        return Router.routes(harness);
    }

    /** The wires in each segment that has any. */
    public SortedMap<SegmentId, SortedSet<WireId>> wiresBySegment() {
        SortedMap<SegmentId, SortedSet<WireId>> wires = new TreeMap<>();
        byWire.forEach((wire, route) -> route.segmentSet()
                .forEach(segment ->
                        wires.computeIfAbsent(segment, id -> new TreeSet<>()).add(wire)));
        return Collections.unmodifiableSortedMap(wires);
    }

    /** The way of a wire. */
    public Optional<Route> of(WireId wire) {
        return Optional.ofNullable(byWire.get(wire));
    }

    /** The wire's entered length, otherwise the length of its way, m; empty when neither is known or it is 0. */
    public OptionalDouble lengthMetres(Wire wire) {
        if (wire.lengthMetres().isPresent()) {
            return wire.lengthMetres();
        }
        return of(wire.id())
                .map(Route::lengthMetres)
                .filter(length -> length > 0)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }
}
