package org.ohmloom.review;

import java.util.List;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.Setting;

/** Tells starter motors from other motors by how they are used. */
final class CrankingMotors {

    private CrankingMotors() {}

    /** Whether it is a motor that states only ever ask on at its start current. */
    static boolean isOne(Harness harness, ComponentId id) {
        boolean motor = harness.components().get(id).device() instanceof Load load && load.draw() instanceof Draw.Motor;
        List<Setting> settings = harness.states().all().stream()
                .flatMap(state -> state.setting(id).stream())
                .filter(Setting::on)
                .toList();
        return motor && !settings.isEmpty() && settings.stream().allMatch(Setting::starting);
    }
}
