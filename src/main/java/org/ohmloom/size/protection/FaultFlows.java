package org.ohmloom.size.protection;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;

/**
 * The solved currents of a fault.
 *
 * @param amps    current through the fault, A, 0 or more
 * @param through current through every branch that carries some of it, A, as a magnitude
 */
record FaultFlows(double amps, SortedMap<BranchId, Double> through) {
    FaultFlows {
        through = Collections.unmodifiableSortedMap(new TreeMap<>(through));
    }

    double through(BranchId branch) {
        return through.getOrDefault(branch, 0.0);
    }
}
