package org.ohmloom.signal.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Channel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinGroup;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.PinUse;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.channel.SensorChannels;
import org.ohmloom.signal.plan.PlanProblem.Kind;
import org.ohmloom.tables.WireTables;

/** What is wrong with a plan, what mends it, and what is left alone. */
@BesideOthers
class PlanCheckTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final WireTables TABLES = WireTables.bundled();
    private static final Sensor THERMISTOR =
            sensor(Sensor.Kind.THERMISTOR, 0, new Calibration.Beta(10_000, 25, 3435), "°C");
    private static final Sensor PRESSURE =
            sensor(Sensor.Kind.RATIOMETRIC, 0.01, new Calibration.RatiometricLine(0.1, 0.9, NONE), "bar");
    private static final Sensor WHEEL =
            sensor(Sensor.Kind.HALL, 0.01, new Calibration.PulseLevels(0.3, NONE, NONE, OptionalDouble.of(1)), "1/min");

    private static Sensor sensor(Sensor.Kind kind, double drawAmps, Calibration calibration, String unit) {
        return new Sensor(kind, drawAmps, NONE, Optional.of(Measurement.of("Quantity", unit, 0, 100, calibration)));
    }

    private static Channel channel(String name, String pin, String component) {
        return new Channel(name, pin, new ComponentId(component), Optional.empty(), Optional.empty(), false);
    }

    private static Pin pulled(String name, PinRole role, Set<PinRole> can) {
        return new Pin(name, role, can, NONE, NONE, NONE, OptionalDouble.of(5), OptionalDouble.of(2200));
    }

    private static ControlUnit unit(List<Pin> pins, List<Channel> channels) {
        return new ControlUnit(pins, 0.2, NONE, NONE).withChannels(channels);
    }

    private static List<PlanProblem> problems(Harness harness) {
        return PlanCheck.of(
                harness,
                SensorChannels.of(harness, NetworkBuilder.build(harness, HarnessSketch.state(), wire -> 0.1, TABLES)));
    }

    private static List<Kind> kinds(Harness harness) {
        return problems(harness).stream().map(PlanProblem::kind).toList();
    }

    private static Harness mended(Harness harness) {
        return problems(harness).get(0).mending().orElseThrow().apply(harness);
    }

    @Test
    void aWireToAnotherPinThanPlannedIsToldAndThePlanCanFollowIt() {
        Harness harness = new HarnessSketch()
                .component(
                        "U1",
                        unit(
                                List.of(
                                        pulled("T1", PinRole.THERMISTOR_INPUT, Set.of()),
                                        pulled("T2", PinRole.THERMISTOR_INPUT, Set.of())),
                                List.of(channel("Oil", "T1", "B1"))))
                .component("B1", THERMISTOR)
                .wire("W1", "B1.signal", "U1.T2", 0.1)
                .harness();
        assertEquals(
                "B1 is planned for U1.T1 and wired to U1.T2",
                problems(harness).get(0).words().english());
        assertEquals(List.of(), kinds(mended(harness)));
    }

    /** A thermistor at an input for voltages has no pull-up to be read with; the pin can be set up with one. */
    @Test
    void aPinIsSetUpForWhatIsAtIt() {
        Pin both = pulled("A1", PinRole.THERMISTOR_INPUT, Set.of(PinRole.ANALOGUE_INPUT))
                .withUses(List.of(PinUse.now(Pin.of("A1", PinRole.ANALOGUE_INPUT))))
                .setUpAs(PinRole.ANALOGUE_INPUT);
        Harness harness = new HarnessSketch()
                .component("U1", unit(List.of(both), List.of()))
                .component("B1", THERMISTOR)
                .wire("W1", "B1.signal", "U1.A1", 0.1)
                .harness();
        assertEquals(List.of(Kind.PULL_UP), kinds(harness));
        assertEquals(List.of(), kinds(mended(harness)));

        Harness lifted = new HarnessSketch()
                .component("U1", unit(List.of(pulled("T1", PinRole.THERMISTOR_INPUT, Set.of())), List.of()))
                .component("B1", PRESSURE)
                .wire("W1", "B1.signal", "U1.T1", 0.1)
                .harness();
        assertEquals(
                "B1 at U1.T1 gives a voltage, and the pin has a pull-up that lifts it",
                problems(lifted).get(0).words().english());
        assertTrue(problems(lifted).get(0).mending().isEmpty());

        Harness counted = new HarnessSketch()
                .component("U1", unit(List.of(Pin.of("A1", PinRole.ANALOGUE_INPUT)), List.of()))
                .component("B1", WHEEL)
                .wire("W1", "B1.signal", "U1.A1", 0.1)
                .harness();
        assertEquals(
                "B1 at U1.A1 needs a frequency input; the pin is set up as analogue input and cannot be that",
                problems(counted).get(0).words().english());
    }

    @Test
    void namesAreHeldAgainstTheUnitAndAgainstEachOther() {
        List<Pin> pins = List.of(
                pulled("T1", PinRole.THERMISTOR_INPUT, Set.of()), pulled("T2", PinRole.THERMISTOR_INPUT, Set.of()));
        Harness harness = new HarnessSketch()
                .component("U1", unit(pins, List.of(channel("Oil", "T1", "B1"), channel("oil ", "T2", "B2"))))
                .component("B1", THERMISTOR)
                .component("B2", THERMISTOR)
                .harness();
        assertEquals(List.of(Kind.NAMES_ALIKE), kinds(harness));
        assertEquals(List.of(), kinds(mended(harness)));
    }

    /** Pins of 3 A together: a load of 2 A and one of 1.5 A make 3.5 A; the smaller one that is enough goes to a pin outside. */
    @Test
    void aGroupOfOutputsCarriesNoMoreThanItMay() {
        ControlUnit grouped = new ControlUnit(
                List.of(
                        Pin.of("H1", PinRole.HIGH_SIDE_OUTPUT),
                        Pin.of("H2", PinRole.HIGH_SIDE_OUTPUT),
                        Pin.of("H3", PinRole.HIGH_SIDE_OUTPUT)),
                0.2,
                NONE,
                NONE,
                NONE,
                NONE,
                NONE,
                Optional.empty(),
                List.of(new PinGroup("bank", List.of("H1", "H2"), 3)),
                List.of(channel("Pump", "H1", "P1"), channel("Lamp", "H2", "P2")));
        Harness harness = new HarnessSketch()
                .component("U1", grouped)
                .load("P1", 2, 12)
                .load("P2", 1.5, 12)
                .harness();
        PlanProblem over = problems(harness).get(0);
        assertEquals(
                "The pins of group 'bank' of U1 carry 3.5 A together, more than 3 A",
                over.words().english());
        assertEquals("Move Lamp to U1.H3", over.mending().orElseThrow().label().english());
        assertEquals(List.of(), kinds(mended(harness)));
    }

    /** Coils of 6 ohm and 60 ohm at 12 V take 2 A and 0.2 A, more than 2 A together; a pin of 0.1 A takes neither of them. */
    @Test
    void aCoilIsMovedOnlyToAPinThatCarriesItsCurrent() {
        Harness harness = coils(0.1);
        assertEquals(
                "The pins of group 'bank' of U1 carry 2.2 A together, more than 2 A",
                problems(harness).get(0).words().english());
        assertEquals(Optional.empty(), problems(harness).get(0).mending());
        assertEquals(
                "Move Fan to U1.H3",
                problems(coils(0.2)).get(0).mending().orElseThrow().label().english());
    }

    private static Harness coils(double limitAmps) {
        Pin limited =
                new Pin("H3", PinRole.HIGH_SIDE_OUTPUT, Set.of(), OptionalDouble.of(limitAmps), NONE, NONE, NONE, NONE);
        ControlUnit unit = new ControlUnit(
                List.of(Pin.of("H1", PinRole.HIGH_SIDE_OUTPUT), Pin.of("H2", PinRole.HIGH_SIDE_OUTPUT), limited),
                0.2,
                NONE,
                NONE,
                NONE,
                NONE,
                NONE,
                Optional.empty(),
                List.of(new PinGroup("bank", List.of("H1", "H2"), 2)),
                List.of(channel("Starter", "H1", "K1"), channel("Fan", "H2", "K2")));
        return new HarnessSketch()
                .component("U1", unit)
                .component("K1", new Relay(6, 7, 2, 0.001, 100, false))
                .component("K2", new Relay(60, 7, 2, 0.001, 30, false))
                .harness();
    }
}
