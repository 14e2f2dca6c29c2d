package org.ohmloom.solve;

import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Network;
import org.ohmloom.model.Harness;

/**
 * Solves a harness in one operating state: {@link SensedSolver} for currents and voltages, {@link LoadVoltsStudy} for what
 * reaches each load, {@link ResidualCheck} for how far to trust it.
 */
public final class DcSolver {

    private DcSolver() {}

    /**
     * Solves the network of a harness.
     *
     * @param network   the harness as a network in one operating state
     * @param harness   the harness, for its loads and their limits
     * @param cancelled asked now and then; true stops the solution
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public static Solution solve(Network network, Harness harness, BooleanSupplier cancelled) {
        return solve(network, harness, new SourceMemory(), cancelled);
    }

    /**
     * Solves the network of a harness in a state that was solved before in much the same way.
     *
     * @param network   the harness as a network in one operating state
     * @param harness   the harness, for its loads and their limits
     * @param memory    what the search for the sources found before; keeps what this one finds
     * @param cancelled asked now and then; true stops the solution
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public static Solution solve(Network network, Harness harness, SourceMemory memory, BooleanSupplier cancelled) {
        NetworkSolution solved = SensedSolver.solve(network, memory, cancelled);
        ResidualCheck check = ResidualCheck.of(solved.flows().values(), solved.volts());
        return new Solution(
                solved.network(),
                solved.islands(),
                solved.islandOf(),
                solved.volts(),
                solved.flows(),
                LoadVoltsStudy.of(solved, harness),
                check.amps(),
                check.volts(),
                solved.duty());
    }
}
