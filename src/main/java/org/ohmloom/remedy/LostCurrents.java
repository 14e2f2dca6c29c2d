package org.ohmloom.remedy;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.SwitchedLoads;
import org.ohmloom.ground.Causes;
import org.ohmloom.ground.LostReturn;
import org.ohmloom.model.StateId;
import org.ohmloom.review.Evidence;
import org.ohmloom.review.Finding;
import org.ohmloom.solve.Solution;

/** The current through what a lost return overloads, before a change and after it. */
final class LostCurrents {

    private LostCurrents() {}

    static Optional<Effect> effect(Finding finding, Evidence before, Evidence after) {
        Optional<Target> target = Targets.of(finding, before);
        Optional<LostReturn.Overload> overload = overload(finding, before);
        return target.filter(LossTarget.class::isInstance)
                .map(LossTarget.class::cast)
                .flatMap(loss -> overload.map(worst -> new Effect(
                        RemedyTexts.text("through-when-opens", loss.member(), loss.opened()),
                        worst.amps(),
                        overload(finding, after)
                                .map(LostReturn.Overload::amps)
                                .orElseGet(() -> worst.limitAmps() * ratio(loss, after)),
                        "A")));
    }

    /** The worst overload the finding tells of. */
    private static Optional<LostReturn.Overload> overload(Finding finding, Evidence evidence) {
        return evidence.returns().losses().stream()
                .filter(loss -> finding.subjects().contains(loss.opened().value()))
                .flatMap(loss -> loss.overLimit().stream()
                        .filter(each -> !each.member().equals(loss.opened())
                                && finding.subjects().contains(each.member().value())))
                .max(Comparator.comparingDouble(each -> each.amps() / each.limitAmps()));
    }

    /** What is left where it is within its limit, by superposition in the solved states of the changed harness. */
    private static double ratio(LossTarget loss, Evidence evidence) {
        OptionalDouble most = loss.states().stream()
                .mapToDouble(state -> in(loss, state, evidence))
                .max();
        return most.orElse(0);
    }

    private static double in(LossTarget loss, StateId state, Evidence evidence) {
        Solution solution = evidence.solutions().get(state);
        return loss.in(new ChangedState(
                        evidence.harness(),
                        solution.network(),
                        solution,
                        Causes.of(SwitchedLoads.of(evidence.drawn()), solution),
                        () -> false))
                .value();
    }
}
