package org.ohmloom.solve.charge;

import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.NetworkSolution;

/** Solves the network of an operating state, with conductors as warm as that state makes them. */
@FunctionalInterface
public interface StateSolver {

    /**
     * The solution of a state of the harness, perhaps with other settings of its sources and another duration.
     *
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    NetworkSolution solve(OperatingState state);
}
