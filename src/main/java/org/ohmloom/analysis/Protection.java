package org.ohmloom.analysis;

import java.util.SortedMap;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.graph.Upstream;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.WireId;
import org.ohmloom.size.RelyingDevices;
import org.ohmloom.size.SizingInput;
import org.ohmloom.size.UpstreamDevices;
import org.ohmloom.size.protection.ProtectionInput;
import org.ohmloom.size.protection.ProtectionResults;
import org.ohmloom.size.protection.ProtectionStudy;
import org.ohmloom.solve.run.StartUps;

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

    /** What every protective device carries, protects and clears. */
    ProtectionResults study(
            SizingInput input, SortedMap<WireId, WireRating> ratings, StartUps startUps, Cancel cancel) {
        return ProtectionStudy.of(new ProtectionInput(
                bench.harness(),
                bench.tables(),
                bench.basis(),
                bench.routes(),
                drawn,
                upstream,
                input.solutions(),
                ratings,
                bench.bundleHeat(),
                new RelyingDevices(input)::ofReturn,
                startUps,
                cancel::isRequested));
    }

    /** The devices wires rely on. */
    UpstreamDevices devices() {
        return UpstreamDevices.of(bench.harness(), upstream);
    }
}
