package org.ohmloom.analysis;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.solve.DcSolver;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.SourceMemory;

/**
 * A harness whose ground points can all be opened.
 *
 * <p>A joint of 0 ohm is no branch: the stack and the body are one point. Where there are such joints they get
 * {@link #JOINT_OHMS}, and every state is solved once more with the conductors as warm as they were found; 100 A lose 0.1 mV on that.
 *
 * @param harness   the harness, every joint with a resistance
 * @param drawn     its network with nothing switched on
 * @param solutions solution of every state
 */
record OpenableGrounds(Harness harness, Network drawn, SortedMap<StateId, Solution> solutions) {

    /** Resistance in place of none, ohm. */
    static final double JOINT_OHMS = 1e-6;

    /** The harness as it is where every joint has a resistance, otherwise with one for each that has none. */
    static OpenableGrounds of(Bench bench, ProvisionalSizes sizes, Network drawn, HeatedSolutions heated) {
        List<GroundPoint> ideal = bench.harness().grounds().all().stream()
                .filter(ground -> ground.jointOhms() == 0)
                .toList();
        if (ideal.isEmpty()) {
            return new OpenableGrounds(bench.harness(), drawn, heated.solutions());
        }
        Harness harness = bench.harness();
        for (GroundPoint ground : ideal) {
            harness = harness.with(jointed(ground));
        }
        Bench jointed = bench.inStatesOrJointsOf(harness);
        SortedMap<StateId, SortedMap<WireId, Double>> celsius = heated.wireCelsius();
        Map<StateId, Solution> solutions = heated.solutions().keySet().parallelStream()
                .collect(Collectors.toMap(state -> state, state -> solve(jointed, sizes, state, celsius)));
        return new OpenableGrounds(harness, Protection.of(jointed).drawn(), new TreeMap<>(solutions));
    }

    private static Solution solve(
            Bench bench, ProvisionalSizes sizes, StateId state, SortedMap<StateId, SortedMap<WireId, Double>> celsius) {
        bench.cancel().check();
        Network network = NetworkBuilder.build(
                bench.harness(),
                bench.harness().states().get(state),
                wire -> bench.ohms(
                        wire,
                        sizes.gauge(wire),
                        HeatedSolutions.held(bench, wire, celsius.get(state).get(wire.id()))),
                bench.tables());
        return DcSolver.solve(network, bench.harness(), new SourceMemory(), bench.cancel()::isRequested);
    }

    private static GroundPoint jointed(GroundPoint ground) {
        return ground.withJointOhms(JOINT_OHMS);
    }
}
