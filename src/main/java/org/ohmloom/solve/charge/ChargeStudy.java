package org.ohmloom.solve.charge;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.SourceConditions;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Component;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.SequenceId;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.SteadySources;
import org.ohmloom.tables.WireTables;

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
     * Studies a harness. A sequence runs on the solved networks, with their conductors as warm as their states make them and
     * the batteries' laws at the charge level of the instant.
     *
     * @param harness   the harness
     * @param tables    published tables
     * @param solutions solution of each state
     * @param cancelled asked now and then; true stops the study
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public static ChargeStudy of(
            Harness harness, WireTables tables, Map<StateId, Solution> solutions, BooleanSupplier cancelled) {
        SourceConditions conditions = SourceConditions.of(harness, tables);
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
        StateSolver solver = state -> SteadySources.of(
                solutions.get(state.id()).network().withLaws(batteryLaws(harness, conditions, state)), cancelled);
        List<SequenceRun> sequences = harness.sequences().all().stream()
                .filter(sequence -> sequence.steps().stream().allMatch(step -> solutions.containsKey(step.state())))
                .map(sequence -> SequenceRunner.run(harness, conditions, sequence, solver))
                .toList();
        return new ChargeStudy(states, tabulations, sequences);
    }

    private static Map<BranchId, Law> batteryLaws(Harness harness, SourceConditions conditions, OperatingState state) {
        Map<BranchId, Law> laws = new TreeMap<>();
        for (Component component : harness.components().all()) {
            if (component.device() instanceof Battery battery && state.sourceOn(component.id(), battery)) {
                laws.put(
                        new BranchId(component.id().value()),
                        conditions.battery(component, battery, state).law());
            }
        }
        return laws;
    }

    /** The sequence of that identity as it ran. */
    public Optional<SequenceRun> sequence(SequenceId id) {
        return sequences.stream().filter(run -> run.sequence().equals(id)).findFirst();
    }
}
