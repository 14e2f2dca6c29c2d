package org.ohmloom.review;

import java.util.Optional;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.words.Text;

/** Words for operating states in sentences. */
final class StateNames {

    private StateNames() {}

    /** The state's name in quotation marks, or "no state". */
    static Text of(Evidence evidence, Optional<StateId> state) {
        return state.flatMap(id -> evidence.harness().states().find(id))
                .map(StateNames::quoted)
                .orElseGet(() -> RuleInfo.TEXTS.text("any.no-state"));
    }

    /** The state's name in quotation marks. */
    static Text quoted(OperatingState state) {
        return Text.of("'" + state.name() + "'");
    }

    /** The worst of several states with how many more there are: {@code 'Night' and 2 more states}. */
    static Text worstOf(OperatingState worst, int states) {
        int more = states - 1;
        return more == 0
                ? quoted(worst)
                : RuleInfo.TEXTS.text("any.more-states", quoted(worst), more, String.valueOf(more));
    }
}
