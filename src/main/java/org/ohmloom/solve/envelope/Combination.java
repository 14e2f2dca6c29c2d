package org.ohmloom.solve.envelope;

import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.Solution;

/**
 * One combination of loads, solved in full.
 *
 * @param id       identity within its situation; begins with {@code state} and its identity for a named state
 * @param loads    loads that run
 * @param controls switches, outputs and commands that are on, as text: {@code S1}, {@code U1.HS1}
 * @param state    the same as an operating state
 * @param solution its solution
 */
public record Combination(
        String id, SortedSet<ComponentId> loads, SortedSet<String> controls, OperatingState state, Solution solution) {

    /** What the ids of their states begin with, where no state of the harness is the same. */
    private static final String STATE = "worst-combination-";

    public Combination {
        loads = Collections.unmodifiableSortedSet(new TreeSet<>(loads));
        controls = Collections.unmodifiableSortedSet(new TreeSet<>(controls));
    }

    static StateId stateId(String id) {
        return new StateId(STATE + id);
    }

    /** Whether a state is a combination of loads that nobody named. */
    public static boolean isUnnamed(StateId state) {
        return state.value().startsWith(STATE);
    }
}
