package org.ohmloom.solve.run;

import java.util.List;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.StateId;
import org.ohmloom.words.Text;

/**
 * A start that was not followed over time.
 *
 * @param state    the operating state
 * @param starters what would start
 * @param reason   why not, one sentence
 */
public record SkippedStart(StateId state, List<ComponentId> starters, Text reason) {

    public SkippedStart {
        starters = List.copyOf(starters);
    }
}
