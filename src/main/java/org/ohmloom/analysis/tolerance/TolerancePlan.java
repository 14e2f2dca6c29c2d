package org.ohmloom.analysis.tolerance;

import static org.ohmloom.units.Require.that;
import static org.ohmloom.units.Require.within;

import java.util.Optional;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.StateId;

/**
 * What is asked of a study of tolerances.
 *
 * @param runs    count of harnesses drawn, {@link #LEAST_RUNS} to {@link #MOST_RUNS}
 * @param seed    what the draws follow from
 * @param spreads what spreads how far
 * @param state   the only state looked at; empty for the worst of each result
 * @param load    the only load looked at, with what lies on its way
 */
public record TolerancePlan(int runs, long seed, Spreads spreads, Optional<StateId> state, Optional<ComponentId> load) {

    public static final int LEAST_RUNS = 20;
    public static final int MOST_RUNS = 20_000;
    public static final int USUAL_RUNS = 200;
    public static final long USUAL_SEED = 1;

    public TolerancePlan {
        within(runs, LEAST_RUNS, MOST_RUNS, "count of runs");
        that(seed >= 0, "the seed must be 0 or more, was %s", seed);
    }

    /** The usual for all results. */
    public static TolerancePlan usual(Spreads spreads) {
        return new TolerancePlan(USUAL_RUNS, USUAL_SEED, spreads, Optional.empty(), Optional.empty());
    }
}
