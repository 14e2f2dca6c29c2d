package org.ohmloom.analysis;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.tables.WireTables;

/** The networks of a harness in its operating states, each built once; the resistance of its wires is still to be said. Safe on any thread. */
final class StateNetworks {

    private static final double ANY_OHMS = 1;

    private final Harness harness;
    private final WireTables tables;
    private final Map<StateId, Network> built = new ConcurrentHashMap<>();

    StateNetworks(Harness harness, WireTables tables) {
        this.harness = harness;
        this.tables = tables;
    }

    /** The network of a state of the harness. */
    Network of(OperatingState state) {
        return built.computeIfAbsent(state.id(), id -> NetworkBuilder.build(harness, state, wire -> ANY_OHMS, tables));
    }
}
