package org.ohmloom.signal.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.edit.Session;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.InputRange;
import org.ohmloom.model.Load;
import org.ohmloom.model.LoadGroup;
import org.ohmloom.model.LoadGroupId;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinGroup;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.PinUse;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.WiringRules;
import org.ohmloom.signal.pins.EveryAllocation;
import org.ohmloom.signal.pins.PinPlan;
import org.ohmloom.signal.pins.Preferences;

/** Channels planned from the sensors, loads and units of a harness. */
@BesideOthers
class ChannelPlanTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final Sensor PRESSURE = new Sensor(
            Sensor.Kind.RATIOMETRIC,
            0.01,
            NONE,
            Optional.of(Measurement.of(
                    "Pressure", "bar", 0, 10, new Calibration.RatiometricLine(0.1, 0.9, OptionalDouble.of(10)))));
    private static final Sensor THERMISTOR = new Sensor(Sensor.Kind.THERMISTOR, 0, OptionalDouble.of(2000));
    private static final Sensor SPEED = new Sensor(
            Sensor.Kind.HALL,
            0.01,
            NONE,
            Optional.of(Measurement.of(
                    "Speed", "1/min", 0, 6000, new Calibration.PulseLevels(0.3, NONE, NONE, OptionalDouble.of(1)))));

    private static Pin pin(String name, PinRole... roles) {
        return new Pin(name, roles[0], Set.of(roles), NONE, NONE, NONE, NONE, NONE);
    }

    private static Pin limited(String name, double limitAmps, PinRole... roles) {
        return new Pin(
                name, roles[0], Set.of(roles), OptionalDouble.of(limitAmps), NONE, NONE, NONE, NONE, Optional.empty());
    }

    private static ControlUnit unit(Pin... pins) {
        return new ControlUnit(List.of(pins), 0.2, NONE, NONE);
    }

    private static ControlUnit grouped(double limitAmps, Pin... pins) {
        List<String> names = Stream.of(pins)
                .filter(pin -> !pin.role().equals(PinRole.REFERENCE_SUPPLY)
                        && !pin.role().equals(PinRole.SENSOR_RETURN))
                .map(Pin::name)
                .toList();
        return new ControlUnit(
                List.of(pins),
                0.2,
                NONE,
                NONE,
                NONE,
                NONE,
                NONE,
                Optional.empty(),
                List.of(new PinGroup("driver", names, limitAmps)),
                List.of());
    }

    private static List<Channel> channels(Harness harness, String unit) {
        return ((ControlUnit) harness.components().get(new ComponentId(unit)).device()).channels();
    }

    private static Harness planned(Harness harness) {
        return ChannelPlan.of(harness).edit().orElseThrow().apply(harness);
    }

    @Test
    void aSensorGetsInputSupplyAndReturnOfOneUnitAndThePinIsSetUp() {
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
        Harness harness = new HarnessSketch()
                .component(
                        "U1",
                        unit(
                                pin("REF", PinRole.REFERENCE_SUPPLY),
                                pin("RET", PinRole.SENSOR_RETURN),
                                pin("AN1", PinRole.ANALOGUE_INPUT),
                                pin("AN2", PinRole.ANALOGUE_INPUT).withUses(List.of(thermistor))))
                .component("B1", PRESSURE)
                .component("B2", THERMISTOR)
                .harness();
        Session session = new Session(harness, Optional.empty());
        session.apply(ChannelPlan.of(harness).edit().orElseThrow());
        List<Channel> channels = channels(session.current(), "U1");
        assertEquals(
                List.of(
                        new Channel("B1", "AN1", new ComponentId("B1"), Optional.of("REF"), Optional.of("RET"), false),
                        new Channel("B2", "AN2", new ComponentId("B2"), Optional.empty(), Optional.of("RET"), false)),
                channels);
        ControlUnit unit = (ControlUnit)
                session.current().components().get(new ComponentId("U1")).device();
        assertEquals(OptionalDouble.of(2200), unit.pin("AN2").orElseThrow().pullUpOhms());
        session.undo();
        assertSame(harness, session.current(), "one step back");
    }

    @Test
    void wiresThatAreThereAndPinsAPersonLockedStay() {
        Harness harness = new HarnessSketch()
                .component(
                        "U1",
                        unit(
                                pin("RET", PinRole.SENSOR_RETURN),
                                pin("T1", PinRole.THERMISTOR_INPUT),
                                pin("T2", PinRole.THERMISTOR_INPUT),
                                pin("T3", PinRole.THERMISTOR_INPUT)))
                .component("B1", THERMISTOR)
                .component("B2", THERMISTOR)
                .component("B3", THERMISTOR)
                .wire("W1", "B1.signal", "U1.T3", 0.1)
                .harness();
        ControlUnit unit =
                (ControlUnit) harness.components().get(new ComponentId("U1")).device();
        Component locked = harness.components()
                .get(new ComponentId("U1"))
                .withDevice(unit.withChannels(List.of(
                        new Channel("Oil", "T2", new ComponentId("B2"), Optional.empty(), Optional.of("RET"), true))));
        List<Channel> channels = channels(planned(harness.with(locked)), "U1");
        assertEquals(
                List.of("B1 T3", "Oil T2", "B3 T1"),
                channels.stream().map(each -> each.name() + " " + each.pin()).toList());
        assertTrue(channels.get(1).locked());
    }

    /** An output of 4 A and one of 10 A on a driver of 12 A together: pumps of 3 A and 8 A, 11 A, fit; a third of 3 A does not. */
    @Test
    void outputsKeepTheirOwnLimitAndThatOfTheirDriverUnlessLoadsExcludeEachOther() {
        ControlUnit unit = grouped(
                12,
                limited("H1", 4, PinRole.HIGH_SIDE_OUTPUT),
                limited("H2", 10, PinRole.HIGH_SIDE_OUTPUT),
                limited("H3", 4, PinRole.HIGH_SIDE_OUTPUT));
        HarnessSketch two =
                new HarnessSketch().component("U1", unit).load("P1", 8, 12).load("P2", 3, 12);
        assertEquals(
                List.of("P1 H2", "P2 H1"),
                channels(planned(two.harness()), "U1").stream()
                        .map(each -> each.name() + " " + each.pin())
                        .toList());
        Harness three = two.load("P3", 3, 12).harness();
        PinPlan.Impossible impossible =
                assertInstanceOf(PinPlan.Impossible.class, ChannelPlan.of(three).answer());
        assertEquals(List.of("driver of U1 would carry 14.0 A and may carry 12.0 A"), impossible.currents());
        assertTrue(
                impossible.helps().get(0).startsWith("a relay of its own"),
                impossible.helps().toString());
        Harness excluding = three.with(new LoadGroup(
                new LoadGroupId("L1"),
                "One of the two",
                LoadGroup.Kind.EXCLUSIVE,
                List.of(new ComponentId("P2"), new ComponentId("P3")),
                Optional.empty()));
        assertEquals(3, channels(planned(excluding), "U1").size(), "8 + 3 A, never 8 + 3 + 3 A");
    }

    /** 6000 pulses a second are more than an input for 1 kHz tells. */
    @Test
    void anInputThatCannotTellWhatTheSensorGivesIsLeftOut() {
        Pin slow = pin("F1", PinRole.FREQUENCY_INPUT);
        Pin ranged = new Pin(
                "F1",
                PinRole.FREQUENCY_INPUT,
                Set.of(),
                NONE,
                NONE,
                NONE,
                NONE,
                NONE,
                Optional.empty(),
                Optional.empty(),
                Optional.of(InputRange.upToHertz(1000)),
                List.of());
        for (Pin first : List.of(slow, ranged)) {
            Harness harness = new HarnessSketch()
                    .component(
                            "U1",
                            unit(
                                    pin("REF", PinRole.REFERENCE_SUPPLY),
                                    pin("RET", PinRole.SENSOR_RETURN),
                                    first,
                                    pin("F2", PinRole.FREQUENCY_INPUT)))
                    .component("B1", SPEED)
                    .harness();
            assertEquals(
                    first.range().isPresent() ? "F2" : "F1",
                    channels(planned(harness), "U1").get(0).pin());
        }
    }

    @Test
    void namesAreCutToWhatTheUnitTakesAndStayDifferent() {
        ChannelNames names = new ChannelNames(Optional.of(8));
        assertEquals("Oil pres", names.next("Oil pressure"));
        assertEquals("Oil pr 2", names.next("Oil pressure, rear"));
        assertEquals("Oil pr 3", names.next("Oil pressure, left"));
        assertEquals("Fuel", names.next("Fuel"));
    }

    /** Two inputs and one sensor, one of them to be kept spare; with two kept it is impossible and one more is the least. */
    @Test
    void sparePinsAreKept() {
        Harness harness = new HarnessSketch()
                .component(
                        "U1",
                        unit(
                                pin("RET", PinRole.SENSOR_RETURN),
                                pin("T1", PinRole.THERMISTOR_INPUT),
                                pin("T2", PinRole.THERMISTOR_INPUT)))
                .component("B1", THERMISTOR)
                .harness();
        for (int spare : new int[] {1, 2}) {
            Harness keeping = harness.withRules(harness.rules()
                    .withWiring(new WiringRules(
                            List.of(),
                            Optional.empty(),
                            List.of(new WiringRules.SparePins(PinRole.THERMISTOR_INPUT, spare)))));
            PinPlan answer = ChannelPlan.of(keeping).answer();
            if (spare == 1) {
                assertInstanceOf(PinPlan.Found.class, answer);
            } else {
                assertEquals(
                        "1 more pin that can be thermistor input",
                        assertInstanceOf(PinPlan.Impossible.class, answer)
                                .helps()
                                .get(0));
            }
        }
    }

    /** 300 small harnesses at random, with every preference and limit: the plan costs the least of all there are, or there is none. */
    @Test
    void noOtherPlanOfTheHarnessIsCheaper() {
        Random random = new Random(11);
        int found = 0;
        int impossible = 0;
        for (int round = 0; round < 300; round++) {
            Harness harness = random(random);
            ChannelPlan plan = ChannelPlan.of(harness, Set.of(), Preferences.USUAL);
            double least = EveryAllocation.leastPoints(plan.problem().problem());
            if (plan.answer() instanceof PinPlan.Found each) {
                found++;
                assertTrue(each.proven());
                assertEquals(least, each.costPoints(), 1e-9);
                Harness after = plan.edit().orElseThrow().apply(harness);
                assertEquals(sensorsAndLoads(harness), channelsOf(after));
            } else {
                impossible++;
                assertEquals(Double.POSITIVE_INFINITY, least);
            }
        }
        assertTrue(found > 100 && impossible > 30, found + " found, " + impossible + " impossible");
    }

    private static Set<ComponentId> sensorsAndLoads(Harness harness) {
        Set<ComponentId> ids = new HashSet<>(harness.components().ids());
        ids.removeIf(id -> harness.components().get(id).device() instanceof ControlUnit);
        return ids;
    }

    private static Set<ComponentId> channelsOf(Harness harness) {
        Set<ComponentId> ids = new HashSet<>();
        for (String unit : List.of("U1", "U2")) {
            channels(harness, unit).forEach(each -> ids.add(each.component()));
        }
        return ids;
    }

    private static Harness random(Random random) {
        HarnessSketch sketch = new HarnessSketch();
        for (String unit : List.of("U1", "U2")) {
            List<Pin> pins = new ArrayList<>();
            List<String> cavities = new ArrayList<>();
            pins.add(limited("REF", 0.01 * (1 + random.nextInt(2)), PinRole.REFERENCE_SUPPLY));
            pins.add(pin("RET", PinRole.SENSOR_RETURN));
            for (int k = 0; k < 3; k++) {
                EnumSet<PinRole> roles =
                        EnumSet.of(List.of(PinRole.ANALOGUE_INPUT, PinRole.THERMISTOR_INPUT, PinRole.LOW_SIDE_OUTPUT)
                                .get(random.nextInt(3)));
                if (random.nextBoolean()) {
                    roles.add(PinRole.THERMISTOR_INPUT);
                }
                pins.add(limited("P" + k, 2 + random.nextInt(2), roles.toArray(PinRole[]::new)));
            }
            pins.forEach(each -> cavities.add(each.name() + " " + each.name()));
            sketch.component(unit, grouped(4, pins.toArray(Pin[]::new)));
            int parted = 1 + random.nextInt(4);
            sketch.connector("X1" + unit, unit, cavities.subList(0, parted).toArray(String[]::new));
            sketch.connector("X2" + unit, unit, cavities.subList(parted, 5).toArray(String[]::new));
        }
        int wanted = 2 + random.nextInt(2);
        for (int k = 0; k < wanted; k++) {
            switch (random.nextInt(3)) {
                case 0 -> sketch.component("C" + k, PRESSURE);
                case 1 -> sketch.component("C" + k, THERMISTOR);
                default -> sketch.component(
                        "C" + k,
                        Load.of(
                                random.nextBoolean()
                                        ? new Draw.Motor(1 + random.nextInt(3), 9, 12)
                                        : new Draw.Resistive(1 + random.nextInt(3), 12)));
            }
        }
        return sketch.harness();
    }
}
