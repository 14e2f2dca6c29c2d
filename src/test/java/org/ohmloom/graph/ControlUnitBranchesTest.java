package org.ohmloom.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.ohmloom.graph.NetworkBuilderTest.branch;
import static org.ohmloom.graph.NetworkBuilderTest.ends;
import static org.ohmloom.graph.NetworkBuilderTest.ids;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Setting;

/** A control unit's rails, outputs, reference supply and pull-ups. */
class ControlUnitBranchesTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static Pin output(String name, PinRole role) {
        return new Pin(name, role, Set.of(), OptionalDouble.of(8), OptionalDouble.of(0.03), NONE, NONE, NONE);
    }

    private static HarnessSketch unit(OptionalDouble groundToSensorReturnOhms) {
        List<Pin> pins = List.of(
                Pin.of("A1", PinRole.SUPPLY),
                Pin.of("A2", PinRole.SUPPLY),
                Pin.of("A3", PinRole.GROUND),
                Pin.of("A4", PinRole.GROUND),
                Pin.of("A5", PinRole.CASE),
                Pin.of("B1", PinRole.SENSOR_RETURN),
                new Pin(
                        "B2",
                        PinRole.REFERENCE_SUPPLY,
                        Set.of(),
                        OptionalDouble.of(0.1),
                        NONE,
                        OptionalDouble.of(5),
                        NONE,
                        NONE),
                new Pin(
                        "B3",
                        PinRole.THERMISTOR_INPUT,
                        Set.of(),
                        NONE,
                        NONE,
                        NONE,
                        OptionalDouble.of(5),
                        OptionalDouble.of(2490)),
                output("C1", PinRole.HIGH_SIDE_OUTPUT),
                output("C2", PinRole.LOW_SIDE_OUTPUT),
                Pin.of("C3", PinRole.LOW_SIDE_OUTPUT));
        return new HarnessSketch()
                .component("ECU1", new ControlUnit(pins, 0.3, groundToSensorReturnOhms, OptionalDouble.of(0.5)));
    }

    private static final HarnessSketch JOINED = unit(OptionalDouble.of(0.02));

    @Test
    void pinsOfOneRoleAreOneRailInside() {
        Network network = JOINED.network();
        assertEquals("ECU1.A1 to ECU1.A3", ends(network, "ECU1"));
        assertEquals(network.index().at("ECU1.A1"), network.index().at("ECU1.A2"));
        assertEquals("ECU1.A3 to ECU1.B1", ends(network, "ECU1.ground~sensor-return"));
        assertEquals("ECU1.A3 to ECU1.A5", ends(network, "ECU1.ground~case"));
        assertEquals(BranchKind.INTERNAL, branch(network, "ECU1.ground~case").kind());
    }

    @Test
    void outputsJoinTheirPinToARailWhileTheStateSetsThem() {
        assertEquals(new Law.Open(), branch(JOINED.network(), "ECU1.C1").law());
        ComponentId unit = new ComponentId("ECU1");
        OperatingState state = HarnessSketch.state()
                .with(new OutputPin(unit, "C1"), Setting.ON)
                .with(new OutputPin(unit, "C2"), Setting.duty(0.6))
                .with(new OutputPin(unit, "C3"), Setting.ON);
        Network network = JOINED.network(state);
        assertEquals("ECU1.A1 to ECU1.C1", ends(network, "ECU1.C1"));
        assertEquals(new Law.Resistance(0.03), branch(network, "ECU1.C1").law());
        assertEquals("ECU1.C2 to ECU1.A3", ends(network, "ECU1.C2"));
        assertEquals(
                new Law.SwitchedResistance(0.03, new Pulse("ECU1", 100, 0, 0.6)),
                branch(network, "ECU1.C2").law());
        // C3 states no resistance
        assertEquals(
                new Law.Resistance(ControlUnitBranches.FALLBACK_ON_OHMS),
                branch(network, "ECU1.C3").law());
        assertTrue(network.assumptions().stream()
                .anyMatch(each -> each.text().contains("ECU1.C3 states no on-state resistance")));
    }

    @Test
    void theReferenceSupplyTakesItsCurrentFromTheSupplyAndHandsItOutAtTheSensorReturn() {
        Network network = JOINED.network();
        assertEquals("ECU1.B1 to ECU1.B2", ends(network, "ECU1.B2"));
        assertEquals(
                new Law.VoltageSource(5, 0, 0, 0.1), branch(network, "ECU1.B2").law());
        assertEquals("ECU1.A1 to ECU1.B1", ends(network, "ECU1.B2~input"));
        assertEquals(
                new Law.CurrentOf(new BranchId("ECU1.B2")),
                branch(network, "ECU1.B2~input").law());
        // balance at the sensor return for a sensor that takes I: I arrives from the sensor, I leaves into the
        // output, I arrives from the input; so I leaves to ground through the inside: supply - I, ground + I
        assertEquals(
                new Law.VoltageSource(5, 2490, 0, Double.POSITIVE_INFINITY),
                branch(network, "ECU1.B3").law());
        assertEquals("ECU1.A1 to ECU1.B1", ends(network, "ECU1.B3~input"));
    }

    @Test
    void anIsolatedSensorReturnGetsNothingHandedOut() {
        Network network = unit(NONE).network();
        assertEquals("ECU1.B1 to ECU1.B2", ends(network, "ECU1.B2"));
        assertEquals("ECU1.A1 to ECU1.A3", ends(network, "ECU1.B2~input"));
        assertFalse(ids(network).contains("ECU1.ground~sensor-return"));
    }
}
