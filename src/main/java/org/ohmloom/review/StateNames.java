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

    /** The worst of several states with how many more there are: {@code 'Night' and 2 more states}. */
    static String worstOf(OperatingState worst, int states) {
        return switch (states) {
            case 1 -> quoted(worst);
            case 2 -> quoted(worst) + " and 1 more state";
            default -> quoted(worst) + " and " + (states - 1) + " more states";
        };
    }
}
