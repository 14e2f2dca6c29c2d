package org.ohmloom.analysis;

import org.ohmloom.graph.Network;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.graph.Upstream;
import org.ohmloom.model.OperatingState;
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

    /** The devices wires rely on. */
    UpstreamDevices devices() {
        return UpstreamDevices.of(bench.harness(), upstream);
    }
}
