package org.ohmloom.graph;

import java.util.Collections;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
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
