package org.ohmloom.solve.charge;

import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.SteadySources;

/** Solves the network of an operating state, with conductors as warm as that state makes them. */
@FunctionalInterface
interface StateSolver {

    /**
     * The sources of a state of the harness, perhaps with other settings and another duration.
     *
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    SteadySources solve(OperatingState state);
}
