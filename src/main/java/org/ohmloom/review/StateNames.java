package org.ohmloom.review;

import java.util.Optional;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;

/** Words for operating states in sentences. */
final class StateNames {

    private StateNames() {}

    /** The state's name in quotation marks, or "no state". */
    static String of(Evidence evidence, Optional<StateId> state) {
        return state.flatMap(id -> evidence.harness().states().find(id))
                .map(StateNames::quoted)
                .orElse("no state");
    }

    /** The state's name in quotation marks. */
    static String quoted(OperatingState state) {
        return "'" + state.name() + "'";
    }
}
