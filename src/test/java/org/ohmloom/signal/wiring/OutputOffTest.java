package org.ohmloom.signal.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.Channel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Setting;
import org.ohmloom.model.StateId;

/** A pump at 40 % and a lamp nobody asks for, each served by an output that no state has set. */
class OutputOffTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final ComponentId PUMP = new ComponentId("P1");
    private static final OutputPin FIRST = new OutputPin(new ComponentId("U1"), "H1");
    private static final StateId RUNNING = new StateId("running");

    private static Harness harness() {
        List<Channel> channels = List.of(
                new Channel("Pump", "H1", PUMP, Optional.empty(), Optional.empty(), false),
                new Channel("Lamp", "H2", new ComponentId("L1"), Optional.empty(), Optional.empty(), false));
        Load load = Load.of(new Draw.Resistive(12, 12));
        return new HarnessSketch()
                .component(
                        "U1",
                        new ControlUnit(
                                        List.of(
                                                Pin.of("H1", PinRole.HIGH_SIDE_OUTPUT),
                                                Pin.of("H2", PinRole.HIGH_SIDE_OUTPUT)),
                                        0.1,
                                        NONE,
                                        NONE)
                                .withChannels(channels))
                .component("P1", load)
                .component("L1", load)
                .harness()
                .with(OperatingState.of("parked", "Parked", EngineMode.OFF))
                .with(OperatingState.of("running", "Running", EngineMode.RUNNING)
                        .with(PUMP, Setting.duty(0.4)));
    }

    @Test
    void anOutputIsProposedAtTheDutyItsLoadIsAskedFor() {
        List<OutputOff> off = OutputOff.of(harness());
        assertEquals(
                List.of("U1.H1", "U1.H2"),
                off.stream().map(each -> each.output().toString()).toList());
        assertEquals(Map.of(RUNNING, Setting.duty(0.4)), off.get(0).proposed());
        assertEquals(Map.of(), off.get(1).proposed());
    }

    /** The output has the 40 %: were the load at 40 % too, it would take 16 %. */
    @Test
    void theDutyGoesFromTheLoadToTheOutput() {
        Harness harness = harness();
        Harness set = OutputOff.of(harness).get(0).set(harness, RUNNING, "40 %").apply(harness);
        OperatingState running = set.states().get(RUNNING);
        assertEquals(Optional.of(Setting.duty(0.4)), running.setting(FIRST));
        assertEquals(Optional.of(Setting.ON), running.setting(PUMP));
        assertEquals(
                List.of("U1.H2"),
                OutputOff.of(set).stream().map(each -> each.output().toString()).toList());
    }

    @Test
    void whatIsNoSettingIsRefused() {
        Harness harness = harness();
        OutputOff off = OutputOff.of(harness).get(0);
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> off.set(harness, RUNNING, "sometimes"));
        assertTrue(String.valueOf(refused.getMessage()).contains("sometimes"), refused.getMessage());
    }
}
