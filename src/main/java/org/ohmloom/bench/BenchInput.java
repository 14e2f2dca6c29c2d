package org.ohmloom.bench;

import java.util.SortedMap;
import org.ohmloom.graph.Routes;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.Solution;
import org.ohmloom.tables.BenchLimit;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.WireTables;

/**
 * What the tests of a finished harness rest on.
 *
 * @param harness   the harness
 * @param tables    published tables
 * @param basis     the design basis
 * @param routes    ways of the wires, with the cut lengths
 * @param ratings   what each wire is
 * @param solutions solution of every operating state
 */
public record BenchInput(
        Harness harness,
        WireTables tables,
        DesignBasis basis,
        Routes routes,
        SortedMap<WireId, WireRating> ratings,
        SortedMap<StateId, Solution> solutions) {

    /** A limit or a count of the table of tests, see {@link BenchLimit}. */
    public double limit(String item) {
        return cited(item).value();
    }

    /** The same with where it comes from. */
    public CitedValue cited(String item) {
        return tables.benchLimit(item);
    }

    /** What a wire is. */
    WireRating rating(Wire wire) {
        WireRating rating = ratings.get(wire.id());
        if (rating == null) {
            throw new IllegalArgumentException("wire " + wire.id() + " is not in these results");
        }
        return rating;
    }
}
