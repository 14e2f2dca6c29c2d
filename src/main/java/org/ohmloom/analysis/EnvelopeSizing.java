package org.ohmloom.analysis;

import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.size.SizingInput;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.envelope.Combination;
import org.ohmloom.solve.envelope.Envelope;
import org.ohmloom.solve.envelope.SituationEnvelope;

/**
 * Sizes by the envelope: the combinations that are worst for some wire or load join the operating states the choice of
 * conductors and protective devices rests on.
 * <p>Only for a harness with load groups. Without any nobody has said what may run together, and the named states alone
 * decide.
 */
final class EnvelopeSizing {

    private EnvelopeSizing() {}

    /** What sizing rests on, with the worst combinations as further states; unchanged without load groups. */
    static SizingInput widened(SizingInput input, Envelope envelope) {
        if (!envelope.hasGroups() || envelope.situations().isEmpty()) {
            return input;
        }
        SortedMap<StateId, Combination> worst = worst(input.harness(), envelope);
        SortedMap<StateId, Solution> solutions = new TreeMap<>(input.solutions());
        worst.forEach((state, combination) -> solutions.put(state, combination.solution()));
        Harness widened = input.harness()
                .withAll(worst.values().stream().map(Combination::state).toList());
        return new SizingInput(
                widened,
                input.tables(),
                input.basis(),
                input.routes(),
                solutions,
                input.upstream(),
                input.settling(),
                input.poll());
    }

    private static SortedMap<StateId, Combination> worst(Harness harness, Envelope envelope) {
        SortedMap<StateId, Combination> worst = new TreeMap<>();
        for (WireId wire : harness.wires().ids()) {
            BranchId branch = new BranchId(wire.value());
            envelope.hottest(branch)
                    .ifPresent(situation -> add(
                            harness, situation, situation.branches().get(branch).rmsCombination(), worst));
        }
        for (ComponentId load : harness.components().ids()) {
            envelope.worstDrop(load)
                    .ifPresent(situation ->
                            add(harness, situation, situation.loads().get(load).combination(), worst));
        }
        return worst;
    }

    private static void add(
            Harness harness, SituationEnvelope situation, String id, SortedMap<StateId, Combination> worst) {
        situation
                .combination(id)
                .filter(each -> !harness.states().has(each.state().id()))
                .ifPresent(each -> worst.put(each.state().id(), each));
    }
}
