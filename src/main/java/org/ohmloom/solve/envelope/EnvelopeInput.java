package org.ohmloom.solve.envelope;

import java.util.List;
import java.util.SortedMap;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.ohmloom.graph.Network;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.Solution;

/**
 * What an envelope is made from.
 *
 * @param harness   the harness
 * @param lasting   operating states that last, solved
 * @param solutions solution of each state
 * @param networks  makes the network of any state
 * @param solver    solves a network in full
 * @param cancelled asked now and then; true stops the study
 */
public record EnvelopeInput(
        Harness harness,
        List<OperatingState> lasting,
        SortedMap<StateId, Solution> solutions,
        Function<OperatingState, Network> networks,
        Function<Network, Solution> solver,
        BooleanSupplier cancelled) {
    public EnvelopeInput {
        lasting = lasting.stream()
                .filter(state -> solutions.containsKey(state.id()))
                .toList();
    }
}
