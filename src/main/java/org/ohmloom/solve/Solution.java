package org.ohmloom.solve;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.ComponentId;

/**
 * The solved network of one operating state.
 *
 * @param network       the network it is the solution of
 * @param islands       islands in order
 * @param islandOf      id of the island of every point
 * @param volts         mean voltage of every point relative to the datum, V; a point without an entry has none
 * @param flows         currents and voltages of every branch
 * @param loads         what reaches each load; loads in islands without a solution are left out
 * @param residualAmps  largest imbalance of currents at any point, A, recomputed by separate code
 * @param residualVolts largest |V - I R| of any branch with a resistance, V, recomputed by separate code
 * @param duty          what comes of what switches at a duty
 */
public record Solution(
        Network network,
        List<Island> islands,
        SortedMap<PointId, String> islandOf,
        SortedMap<PointId, Double> volts,
        SortedMap<BranchId, BranchFlow> flows,
        SortedMap<ComponentId, LoadVolts> loads,
        double residualAmps,
        double residualVolts,
        DutyResults duty) {

    /** A solution in which nothing switches. */
    public Solution(
            Network network,
            List<Island> islands,
            SortedMap<PointId, String> islandOf,
            SortedMap<PointId, Double> volts,
            SortedMap<BranchId, BranchFlow> flows,
            SortedMap<ComponentId, LoadVolts> loads,
            double residualAmps,
            double residualVolts) {
        this(network, islands, islandOf, volts, flows, loads, residualAmps, residualVolts, DutyResults.NONE);
    }

    public Solution {
        islands = List.copyOf(islands);
        islandOf = Collections.unmodifiableSortedMap(new TreeMap<>(islandOf));
        volts = Collections.unmodifiableSortedMap(new TreeMap<>(volts));
        flows = Collections.unmodifiableSortedMap(new TreeMap<>(flows));
        loads = Collections.unmodifiableSortedMap(new TreeMap<>(loads));
    }

    /** The voltage of a point relative to the datum, V, if it has one. */
    public OptionalDouble volts(PointId point) {
        Double value = volts.get(point);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** The currents and voltages of a branch. */
    public Optional<BranchFlow> flow(BranchId branch) {
        return Optional.ofNullable(flows.get(branch));
    }

    /** The worst status of the powered islands, {@link IslandStatus#NO_SOURCE} when none is powered. */
    public IslandStatus status() {
        return islands.stream()
                .filter(Island::powered)
                .map(Island::status)
                .max(Enum::compareTo)
                .orElse(IslandStatus.NO_SOURCE);
    }
}
