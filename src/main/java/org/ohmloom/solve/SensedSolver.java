package org.ohmloom.solve;

import java.util.Map;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Network;

/**
 * Solves a network whose alternators regulate at sense points and whose batteries are charged by laws of their own.
 *
 * <p>Regulators and batteries are slow against duty cycles: what they ask holds for the means over the period. For each
 * alternator of the network's sensings exactly one of these holds:
 *
 * <ul>
 *   <li>the sense point has the set point, and it gives between nothing and its limit;
 *   <li>it gives its limit, and the sense point is below the set point;
 *   <li>it gives nothing, and the sense point is above the set point.
 * </ul>
 *
 * <p>{@link SteadySources} finds the electromotive forces. The network of the solution has those of the alternators, so that
 * the same network with other loads starts from there; how far the conditions are missed is recomputed from the published
 * numbers by {@code solve.charge}.
 */
public final class SensedSolver {

    private SensedSolver() {}

    /**
     * Solves a network. A source that is off does nothing; one whose sense point is in another part of the network regulates
     * at its own terminals.
     *
     * @param network   the network
     * @param cancelled asked now and then; true stops the solution
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public static NetworkSolution solve(Network network, BooleanSupplier cancelled) {
        return published(network, searched(network, cancelled));
    }

    /** The same, begun where a search in much the same network ended. */
    static NetworkSolution solve(Network network, SourceMemory memory, BooleanSupplier cancelled) {
        return published(network, searched(network, memory, cancelled));
    }

    /** The finished search, for tests of how many solutions it takes. */
    static SteadySources searched(Network network, BooleanSupplier cancelled) {
        return searched(network, new SourceMemory(), cancelled);
    }

    /** The same, begun where a search in much the same network ended. */
    static SteadySources searched(Network network, SourceMemory memory, BooleanSupplier cancelled) {
        SteadySources sources = SteadySources.of(network, memory, cancelled);
        sources.settle(Map.of());
        return sources;
    }

    private static NetworkSolution published(Network network, SteadySources sources) {
        return sources.solution().of(network.withLaws(sources.found()));
    }
}
