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
 * <p>A state said to be over within a minute, cranking, and a state in which some motor stands at its start current, last seconds; a table of continuous currents
 * says nothing about them, and 33 CFR 183.425 leaves cranking motor conductors out of its table. Their voltage drop
 * counts like that of any other state. A harness with nothing but such states has them all counted.
 */
public final class ContinuousStates {

    /** A state said to last less than this does not last, s: common practice; few conductors are warm by then. */
    public static final double SHORT_SECONDS = 60;
    /** How long cranking and starting are taken to last where nobody says, s: common practice. */
    public static final double USUAL_START_SECONDS = 10;

    private ContinuousStates() {}

    /** Whether a state lasts. */
    public static boolean isContinuous(OperatingState state) {
        return state.mode() != EngineMode.CRANKING
                && state.durationSeconds().orElse(SHORT_SECONDS) >= SHORT_SECONDS
                && state.components().values().stream().noneMatch(ContinuousStates::starts)
                && state.outputs().values().stream().noneMatch(ContinuousStates::starts);
    }

    /** How long a state that does not last takes, s: as it says, otherwise {@link #USUAL_START_SECONDS}. */
    public static double seconds(OperatingState state) {
        return state.durationSeconds().orElse(USUAL_START_SECONDS);
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
