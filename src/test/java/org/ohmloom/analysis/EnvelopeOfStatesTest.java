package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.envelope.Envelope;
import org.ohmloom.solve.envelope.SituationEnvelope;

/** The worst of any combination is never less than any operating state it holds, at the temperatures of that state. */
@BesideOthers
class EnvelopeOfStatesTest {

    /** The envelope keeps what is worse by more than this share. */
    private static final double ROUNDING = 1e-6;

    @ParameterizedTest
    @ValueSource(strings = {"rescue-pickup", "workboat"})
    void noStateCarriesMoreThanTheWorstOfItsSituation(String example) {
        Analysis analysis = AnalysedExamples.of(example);
        Envelope envelope = analysis.evidence().envelope();
        Set<StateId> seen = new TreeSet<>();
        for (SituationEnvelope situation : envelope.situations()) {
            situation.combinations().forEach(combination -> {
                StateId state = combination.state().id();
                Solution solution = analysis.evidence().solutions().get(state);
                if (solution != null && seen.add(state)) {
                    solution.flows().values().forEach(flow -> held(flow, situation, state));
                }
            });
        }
        assertTrue(seen.size() > 1, seen::toString);
    }

    private static void held(BranchFlow flow, SituationEnvelope situation, StateId state) {
        double least = flow.rmsAmps() * (1 - ROUNDING);
        assertTrue(
                least <= 1e-6 || situation.branches().get(flow.branch().id()).rmsAmps() >= least,
                () -> flow.branch().id() + " in " + state + ": " + flow.rmsAmps() + " A, "
                        + situation.branches().get(flow.branch().id()));
    }
}
