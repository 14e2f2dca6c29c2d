package org.ohmloom.remedy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.ohmloom.analysis.AnalysisRefusedException;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.ReturnTrial;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.SwitchedLoads;
import org.ohmloom.graph.SwitchedLoads.SwitchedLoad;
import org.ohmloom.ground.Causes;
import org.ohmloom.model.BrokenReferenceException;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.Solution;

/**
 * Foresees what changes do to the number of a finding, by superposition ({@link ChangedState}); counted, since even that takes time.
 * A state after the first is looked at only while those before it are within the limit.
 */
final class Foresight {

    private final ReturnTrial before;
    private final Target target;
    private final Cancel cancel;
    private final List<SwitchedLoad> switched;
    private final Map<StateId, Causes> causes = new HashMap<>();
    private final int most;
    private int count;

    Foresight(ReturnTrial before, Target target, int most, Cancel cancel) {
        this.before = before;
        this.target = target;
        this.most = most;
        this.cancel = cancel;
        this.switched = SwitchedLoads.of(before.evidence().drawn());
    }

    /**
     * What a change will do.
     *
     * @param candidate the change
     * @param value     the number of the finding in the state it is largest in
     * @param causes    who makes it then, the largest part first
     * @param serves    whether it is within its limit in every state
     */
    record Foreseen(Candidate candidate, double value, List<ComponentId> causes, boolean serves) {}

    /** Whether nothing more is foreseen. */
    boolean isSpent() {
        return count >= most;
    }

    /** How many were foreseen. */
    int count() {
        return count;
    }

    /** What a change will do; empty when it changes nothing or cannot be made. */
    Optional<Foreseen> of(Candidate candidate) {
        cancel.check();
        count++;
        try {
            return candidate.on(before.evidence().harness()).map(changed -> foreseen(candidate, changed));
        } catch (BrokenReferenceException | AnalysisRefusedException notPossible) {
            return Optional.empty();
        }
    }

    private Foreseen foreseen(Candidate candidate, Harness changed) {
        Function<StateId, Network> networks = before.networks(changed);
        Target.Reading worst = Target.Reading.NOTHING;
        for (StateId state : target.states()) {
            Solution solved = before.evidence().solutions().get(state);
            Target.Reading reading = target.in(new ChangedState(
                    changed,
                    networks.apply(state),
                    solved,
                    causes.computeIfAbsent(state, any -> Causes.of(switched, solved)),
                    cancel::isRequested));
            worst = reading.value() > worst.value() ? reading : worst;
            if (worst.value() > target.limit()) {
                break;
            }
        }
        return new Foreseen(candidate, worst.value(), worst.causes(), worst.value() <= target.limit());
    }
}
