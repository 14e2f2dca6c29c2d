package org.ohmloom.solve;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;

/**
 * The solved network without what needs the harness.
 *
 * @param network  the network it is the solution of
 * @param islands  islands in order
 * @param islandOf id of the island of every point
 * @param volts    mean voltage of every point that has one, V
 * @param onMoments for each load the moment by which its voltage drop is judged
 * @param flows    currents and voltages of every branch; relay contacts and fed outputs keep their own law there
 * @param duty     what comes of what switches at a duty
 */
public record NetworkSolution(
        Network network,
        List<Island> islands,
        SortedMap<PointId, String> islandOf,
        SortedMap<PointId, Double> volts,
        SortedMap<BranchId, OnMoment> onMoments,
        SortedMap<BranchId, BranchFlow> flows,
        DutyResults duty) {

    public NetworkSolution {
        islands = List.copyOf(islands);
        islandOf = Collections.unmodifiableSortedMap(new TreeMap<>(islandOf));
        volts = Collections.unmodifiableSortedMap(new TreeMap<>(volts));
        onMoments = Collections.unmodifiableSortedMap(new TreeMap<>(onMoments));
        flows = Collections.unmodifiableSortedMap(new TreeMap<>(flows));
    }

    /** The same solution of a network that differs in its laws for slow sources alone. */
    NetworkSolution of(Network changed) {
        return new NetworkSolution(changed, islands, islandOf, volts, onMoments, flows, duty);
    }
}
