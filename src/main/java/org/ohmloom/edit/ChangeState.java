package org.ohmloom.edit;

import java.util.function.UnaryOperator;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.words.Text;

/**
 * Changes an operating state, such as the charge level it finds its battery at.
 *
 * @param label  what that does
 * @param state  the state
 * @param change makes the changed state; returns an equal one when nothing changes
 */
public record ChangeState(Text label, StateId state, UnaryOperator<OperatingState> change) implements Edit {

    @Override
    public Harness apply(Harness before) {
        OperatingState now = before.states().get(state);
        OperatingState changed = change.apply(now);
        return changed.equals(now) ? before : before.with(changed);
    }
}
