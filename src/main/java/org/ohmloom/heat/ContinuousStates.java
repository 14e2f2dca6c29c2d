package org.ohmloom.heat;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.Setting;
import org.ohmloom.model.StateId;

/**
 * The operating states that last long enough to heat a conductor to its steady temperature.
 *
 * <p>Cranking, and a state in which some motor stands at its start current, last seconds; a table of continuous currents
 * says nothing about them, and 33 CFR 183.425 leaves cranking motor conductors out of its table. Their voltage drop
 * counts like that of any other state. A harness with nothing but such states has them all counted.
 */
public final class ContinuousStates {

    private ContinuousStates() {}

    /** Whether a state lasts. */
    public static boolean isContinuous(OperatingState state) {
        return state.mode() != EngineMode.CRANKING
                && state.components().values().stream().noneMatch(ContinuousStates::starts)
                && state.outputs().values().stream().noneMatch(ContinuousStates::starts);
    }

    /** The states that last, all states when none does. */
    public static SortedSet<StateId> of(Harness harness) {
        List<StateId> lasting = harness.states().all().stream()
                .filter(ContinuousStates::isContinuous)
                .map(OperatingState::id)
                .toList();
        return new TreeSet<>(lasting.isEmpty() ? harness.states().ids() : lasting);
    }

    private static boolean starts(Setting setting) {
        return setting.on() && setting.starting();
    }
}
