package org.ohmloom.workbench.desk;

import java.util.Optional;
import org.ohmloom.draw.SceneOptions;
import org.ohmloom.model.StateId;

/**
 * What the views show of the results.
 *
 * @param state   the operating state; empty for the worst of all
 * @param options numbers and wires of the layout
 */
public record ViewChoice(Optional<StateId> state, SceneOptions options) {

    /** The worst of all states, currents written on the layout. */
    static final ViewChoice FIRST =
            new ViewChoice(Optional.empty(), new SceneOptions(SceneOptions.Numbers.CURRENT, true));

    ViewChoice withState(Optional<StateId> changed) {
        return new ViewChoice(changed, options);
    }

    public ViewChoice withOptions(SceneOptions changed) {
        return new ViewChoice(state, changed);
    }
}
