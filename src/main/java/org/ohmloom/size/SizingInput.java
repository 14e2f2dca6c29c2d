package org.ohmloom.size;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.Solution;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.WireTables;

/**
 * What the choice of conductors and protective devices rests on.
 *
 * @param harness   the harness; wires without a size were solved with a provisional one
 * @param tables    published tables
 * @param basis     the design basis
 * @param routes    ways of the wires over the physical harness
 * @param solutions solution of every operating state
 * @param upstream  protective devices the wires rely on
 * @param settling  where wires settle beside their neighbours, as solved; empty leaves slow overload out of the choice
 * @param poll      called before each wire and device; throws what ends the work
 */
public record SizingInput(
        Harness harness,
        WireTables tables,
        DesignBasis basis,
        Routes routes,
        SortedMap<StateId, Solution> solutions,
        UpstreamDevices upstream,
        Optional<Settling> settling,
        Runnable poll) {

    /** Nobody stops it. */
    public SizingInput(
            Harness harness,
            WireTables tables,
            DesignBasis basis,
            Routes routes,
            SortedMap<StateId, Solution> solutions,
            UpstreamDevices upstream,
            Optional<Settling> settling) {
        this(harness, tables, basis, routes, solutions, upstream, settling, () -> {});
    }

    /** Without the heat of neighbours: slow overload asks nothing. */
    public SizingInput(
            Harness harness,
            WireTables tables,
            DesignBasis basis,
            Routes routes,
            SortedMap<StateId, Solution> solutions,
            UpstreamDevices upstream) {
        this(harness, tables, basis, routes, solutions, upstream, Optional.empty());
    }

    public SizingInput {
        solutions = Collections.unmodifiableSortedMap(new TreeMap<>(solutions));
    }
}
