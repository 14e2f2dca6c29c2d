package org.ohmloom.solve.charge;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.SourceConditions;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.SequenceId;
import org.ohmloom.model.StateId;
import org.ohmloom.model.StateSequence;
import org.ohmloom.solve.Solution;

/**
 * The harness seen from its batteries and alternators.
 *
 * @param states      charge balance of every state, in id order
 * @param tabulations load analysis of every state, in id order
 * @param sequences   every timed sequence as it ran, in id order
 */
public record ChargeStudy(
        SortedMap<StateId, StateCharge> states,
        SortedMap<StateId, LoadTabulation> tabulations,
        List<SequenceRun> sequences) {

    /** A study of nothing. */
    public static final ChargeStudy NONE = new ChargeStudy(new TreeMap<>(), new TreeMap<>(), List.of());

    public ChargeStudy {
        states = Collections.unmodifiableSortedMap(new TreeMap<>(states));
        tabulations = Collections.unmodifiableSortedMap(new TreeMap<>(tabulations));
        sequences = List.copyOf(sequences);
    }

    /**
     * Studies a harness.
     *
     * @param harness    the harness
     * @param conditions what its sources are in each state
     * @param solutions  solution of each state
     * @param solver     solves a state with other settings of its sources
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public static ChargeStudy of(
            Harness harness, SourceConditions conditions, Map<StateId, Solution> solutions, StateSolver solver) {
        SortedMap<StateId, StateCharge> states = new TreeMap<>();
        SortedMap<StateId, LoadTabulation> tabulations = new TreeMap<>();
        for (OperatingState state : harness.states().all()) {
            Optional<Solution> solution = Optional.ofNullable(solutions.get(state.id()));
            solution.ifPresent(solved -> {
                StateCharge charge = ChargeBalance.of(
                        harness,
                        conditions,
                        state,
                        new ChargeBalance.Published(solved.network(), solved.volts(), solved.flows()));
                states.put(state.id(), charge);
                tabulations.put(
                        state.id(),
                        LoadAnalysis.of(harness, state, solved.flows().values(), charge.limitAmps()));
            });
        }
        List<SequenceRun> sequences = harness.sequences().all().stream()
                .map(sequence -> run(harness, conditions, sequence, solver))
                .toList();
        return new ChargeStudy(states, tabulations, sequences);
    }

    /**
     * Runs one sequence.
     *
     * @param harness    the harness
     * @param conditions what its sources are in each state
     * @param sequence   the sequence, of states of the harness
     * @param solver     solves a state with other settings of its sources
     */
    public static SequenceRun run(
            Harness harness, SourceConditions conditions, StateSequence sequence, StateSolver solver) {
        return SequenceRunner.run(harness, conditions, sequence, solver);
    }

    /** The sequence of that identity as it ran. */
    public Optional<SequenceRun> sequence(SequenceId id) {
        return sequences.stream().filter(run -> run.sequence().equals(id)).findFirst();
    }
}
