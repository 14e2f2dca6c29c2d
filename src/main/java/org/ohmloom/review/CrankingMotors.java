package org.ohmloom.review;

import java.util.List;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Setting;

/** Tells starter motors from other motors by how they are used. */
final class CrankingMotors {

    private CrankingMotors() {}

    /** Whether it is a motor that states only ever ask on while the engine cranks or at its start current. */
    static boolean isOne(Harness harness, ComponentId id) {
        boolean motor = harness.components().get(id).device() instanceof Load load
                && (load.draw() instanceof Draw.Motor || load.draw() instanceof Draw.MagnetMotor);
        List<OperatingState> asking = harness.states().all().stream()
                .filter(state -> LoadNotFed.asked(state, id).isPresent())
                .toList();
        return motor
                && !asking.isEmpty()
                && asking.stream()
                        .allMatch(state -> state.mode() == OperatingState.EngineMode.CRANKING
                                || state.setting(id).filter(Setting::starting).isPresent());
    }
}
