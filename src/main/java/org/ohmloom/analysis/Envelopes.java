package org.ohmloom.analysis;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.solve.DcSolver;
import org.ohmloom.solve.envelope.Envelope;
import org.ohmloom.solve.envelope.EnvelopeInput;
import org.ohmloom.solve.envelope.EnvelopeStudy;

/**
 * The envelope of a harness over the states that last, each conductor as warm as any of them makes it: the warmer it is the
 * larger its drop.
 */
final class Envelopes {
    private Envelopes() {}

    static Envelope of(Bench bench, ProvisionalSizes sizes, HeatedSolutions heated) {
        SortedSet<StateId> lasting = bench.lasting();
        List<OperatingState> states = bench.harness().states().all().stream()
                .filter(state -> lasting.contains(state.id()) && ContinuousStates.isContinuous(state))
                .toList();
        if (states.isEmpty()) {
            return Envelope.NONE;
        }
        Map<WireId, Double> warmest = warmest(heated, lasting);
        return EnvelopeStudy.of(new EnvelopeInput(
                bench.harness(),
                states,
                heated.solutions(),
                state -> NetworkBuilder.build(
                        bench.harness(),
                        state,
                        wire -> bench.ohms(
                                wire, sizes.gauge(wire), HeatedSolutions.held(bench, wire, warmest.get(wire.id()))),
                        bench.fuseOhms()),
                network -> DcSolver.solve(network, bench.harness(), bench.cancel()::isRequested),
                bench.cancel()::isRequested));
    }

    private static SortedMap<WireId, Double> warmest(HeatedSolutions heated, SortedSet<StateId> lasting) {
        SortedMap<WireId, Double> warmest = new TreeMap<>();
        for (StateId state : lasting) {
            heated.wireCelsius().get(state).forEach((wire, celsius) -> warmest.merge(wire, celsius, Math::max));
        }
        return warmest;
    }
}
