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
 * @param byWire          shortest way of each wire that has one
 * @param conductorMetres length of conductor of each wire where it is known to differ from that of its way, m
 * @param refused         wires with places at both ends and no permitted way between them
 */
public record Routes(
        SortedMap<WireId, Route> byWire,
        SortedMap<WireId, Double> conductorMetres,
        SortedMap<WireId, RefusedWay> refused) {

    public Routes {
        byWire = Collections.unmodifiableSortedMap(new TreeMap<>(byWire));
        conductorMetres = Collections.unmodifiableSortedMap(new TreeMap<>(conductorMetres));
        refused = Collections.unmodifiableSortedMap(new TreeMap<>(refused));
    }

    /** Ways of wires as long as those. */
    public Routes(SortedMap<WireId, Route> byWire) {
        this(byWire, Collections.emptySortedMap(), Collections.emptySortedMap());
    }

    /** These ways of wires of other lengths, m: with what they get on top of their ways. */
    public Routes withConductorMetres(SortedMap<WireId, Double> metres) {
        return new Routes(byWire, metres, refused);
    }

    /**
     * The shortest way that the routing rules permit of every wire whose ends both have a place on the physical harness and are
     * joined by segments. A wire between two places at one breakout has a way of length 0.
     */
    public static Routes of(Harness harness) {
        return RuledRouter.routes(harness, Router.routes(harness));
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

    /**
     * The wire's entered length, otherwise that of its conductor, otherwise that of its way, m; empty when none is known or
     * it is 0.
     */
    public OptionalDouble lengthMetres(Wire wire) {
        if (wire.lengthMetres().isPresent()) {
            return wire.lengthMetres();
        }
        Double conductor = conductorMetres.get(wire.id());
        if (conductor != null) {
            return OptionalDouble.of(conductor);
        }
        return of(wire.id())
                .map(Route::lengthMetres)
                .filter(length -> length > 0)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }
}
