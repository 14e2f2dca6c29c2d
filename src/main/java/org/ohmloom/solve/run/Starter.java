package org.ohmloom.solve.run;

import java.util.SortedMap;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.solve.WarmNetwork;

/**
 * Something that can start in an operating state.
 *
 * @param id       the load or control unit
 * @param moving   how it starts
 * @param running  the laws of its branches when it runs as the state has it
 * @param positive point of its positive terminal
 * @param negative point of its negative terminal
 * @param follows  whether it also answers while others start: a motor that runs
 */
record Starter(
        ComponentId id,
        Moving moving,
        SortedMap<BranchId, Law> running,
        PointId positive,
        PointId negative,
        boolean follows) {

    /** Makes it run as the state has it. */
    void run(WarmNetwork network) {
        running.forEach(network::set);
    }

    /** Its current in the network as it was last solved, A. */
    double amps(WarmNetwork network) {
        double amps = 0;
        for (BranchId branch : moving.branches()) {
            amps += network.amps(branch);
        }
        return amps;
    }

    /** The voltage at its terminals in the network as it was last solved, V. */
    double volts(WarmNetwork network) {
        return network.volts(positive, negative);
    }
}
