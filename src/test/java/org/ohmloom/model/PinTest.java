package org.ohmloom.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.ohmloom.units.GaugeSystem;

/** Pins that can be several things, and the plan of a unit's pins. */
class PinTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    /** An input for 0 to 5 V that gets a pull-up of 2.2 kOhm to 5 V when a thermistor is read. */
    private static Pin input() {
        PinUse thermistor = new PinUse(
                PinRole.THERMISTOR_INPUT,
                NONE,
                NONE,
                NONE,
                OptionalDouble.of(5),
                OptionalDouble.of(2200),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        return new Pin(
                "AN1",
                PinRole.ANALOGUE_INPUT,
                Set.of(),
                NONE,
                NONE,
                NONE,
                NONE,
                NONE,
                Optional.empty(),
                Optional.empty(),
                Optional.of(InputRange.ofVolts(0, 5)),
                List.of(thermistor));
    }

    @Test
    void aPinSetUpForAnotherRoleWorksAsThatUseSaysAndCanGoBack() {
        Pin thermistor = input().setUpAs(PinRole.THERMISTOR_INPUT);
        assertEquals(PinRole.THERMISTOR_INPUT, thermistor.role());
        assertEquals(OptionalDouble.of(2200), thermistor.pullUpOhms());
        assertEquals(Optional.empty(), thermistor.range());
        assertEquals(Set.of(PinRole.ANALOGUE_INPUT, PinRole.THERMISTOR_INPUT), thermistor.capabilities());
        assertEquals(input(), thermistor.setUpAs(PinRole.ANALOGUE_INPUT));
    }

    @Test
    void aPinIsSetUpForNothingItCannotBe() {
        String message = assertThrows(IllegalArgumentException.class, () -> input().setUpAs(PinRole.LOW_SIDE_OUTPUT))
                .getMessage();
        assertTrue(message.startsWith("pin AN1 cannot be a LOW_SIDE_OUTPUT"), message);
    }

    @Test
    void channelsOfAUnitHaveNamesOfTheirOwnAndPinsItHas() {
        ControlUnit unit = new ControlUnit(List.of(input()), 0.1, NONE, NONE);
        Channel oil = new Channel("Oil", "AN1", new ComponentId("B1"), Optional.empty(), Optional.empty(), false);
        assertEquals(1, unit.withChannels(List.of(oil)).channelsAt("AN1").count());
        assertThrows(IllegalArgumentException.class, () -> unit.withChannels(List.of(oil, oil.locked(true))));
        String message = assertThrows(
                        IllegalArgumentException.class,
                        () -> new ControlUnit(
                                List.of(input()),
                                0.1,
                                NONE,
                                NONE,
                                NONE,
                                NONE,
                                NONE,
                                Optional.empty(),
                                List.of(new PinGroup("bank", List.of("AN2"), 3)),
                                List.of()))
                .getMessage();
        assertEquals(
                "group of pins bank names the pin 'AN2', which the unit does not have; did you mean 'AN1'?", message);
    }

    @Test
    void aChannelGoesWithItsSensorAndAReferenceToNoneIsRefused() {
        Channel oil = new Channel("Oil", "AN1", new ComponentId("B1"), Optional.empty(), Optional.empty(), false);
        ControlUnit unit = new ControlUnit(List.of(input()), 0.1, NONE, NONE).withChannels(List.of(oil));
        Harness bare = Harness.empty(
                new TitleBlock(
                        "T",
                        Optional.empty(),
                        "EX-1",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of()),
                new DesignRules("road-vehicle", 12, 0.05, GaugeSystem.METRIC, "PVC", Optional.empty(), 25));
        assertThrows(BrokenReferenceException.class, () -> bare.with(Component.of("U1", "Unit", unit)));
        assertEquals(
                1,
                bare.withAll(List.of(
                                Component.of("U1", "Unit", unit),
                                Component.of("B1", "Oil", new Sensor(Sensor.Kind.RATIOMETRIC, 0.01, NONE))))
                        .elements()
                        .filter(each -> each instanceof Component of && of.device() instanceof ControlUnit)
                        .count());
    }
}
