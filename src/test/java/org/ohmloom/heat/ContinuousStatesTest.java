package org.ohmloom.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.Setting;
import org.ohmloom.model.StateId;

class ContinuousStatesTest {
    private static final ComponentId FAN = new ComponentId("FAN");

    private static Harness harness(OperatingState... states) {
        return LaidHarness.of("road-vehicle", 12, "ISO 6722-1 class B", 30)
                .harness()
                .with(Component.of("FAN", "Fan", Load.of(new Draw.Motor(10, 40, 12))))
                .withAll(List.of(states));
    }

    private static final OperatingState RUN =
            OperatingState.of("run", "Run", EngineMode.RUNNING).with(FAN, Setting.ON);
    private static final OperatingState CRANK = OperatingState.of("crank", "Crank", EngineMode.CRANKING);
    private static final OperatingState FAN_STARTS =
            OperatingState.of("fan", "Fan starts", EngineMode.RUNNING).with(FAN, Setting.start());

    @Test
    void crankingAndStartingDoNotLast() {
        assertEquals(List.of(new StateId("run")), List.copyOf(ContinuousStates.of(harness(RUN, CRANK, FAN_STARTS))));
    }

    @Test
    void withNothingElseTheyCount() {
        assertEquals(
                List.of(new StateId("crank"), new StateId("fan")),
                List.copyOf(ContinuousStates.of(harness(CRANK, FAN_STARTS))));
    }
}
