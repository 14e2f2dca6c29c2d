package org.ohmloom.analysis;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.graph.Guard;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.graph.Upstream;
import org.ohmloom.model.Battery;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.WireId;
import org.ohmloom.size.UpstreamDevices;

/**
 * The network as drawn, and what stands between its sources and conductors.
 *
 * @param drawn    the network with nothing switched on
 * @param upstream what stands between sources and conductors
 * @param bench    the harness and its tables
 */
record Protection(Network drawn, Upstream upstream, Bench bench) {

    /** Resistance of wires where only the connections matter, ohm. */
    private static final double ANY_OHMS = 1;

    static Protection of(Bench bench) {
        OperatingState nothingOn = OperatingState.of("as-drawn", "as drawn", OperatingState.EngineMode.OFF);
        Network drawn = NetworkBuilder.build(bench.harness(), nothingOn, wire -> ANY_OHMS, bench.fuseOhms());
        return new Protection(drawn, Upstream.of(drawn, bench.harness(), bench::length), bench);
    }

    /**
     * The nearest devices a wire relies on. Only a battery can drive a fault current worth opening for, so a way from a
     * source that limits its own current does not make a wire bare.
     */
    UpstreamDevices devices() {
        return this::nearest;
    }

    private List<ComponentId> nearest(WireId wire) {
        SortedSet<ComponentId> devices = new TreeSet<>();
        for (Guard guard : upstream.guards(wire)) {
            if (guard.bare() && isBattery(guard.source().component())) {
                return List.of();
            }
            devices.addAll(guard.nearest());
        }
        return List.copyOf(devices);
    }

    private boolean isBattery(ComponentId source) {
        return bench.harness().components().get(source).device() instanceof Battery;
    }
}
