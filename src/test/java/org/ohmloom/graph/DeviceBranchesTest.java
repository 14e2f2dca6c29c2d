package org.ohmloom.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.ohmloom.graph.NetworkBuilderTest.branch;
import static org.ohmloom.graph.NetworkBuilderTest.ends;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.BatteryIsolator;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Switch;
import org.ohmloom.tables.WireTables;

/** What each kind of device is in each state. */
class DeviceBranchesTest {
    private static final double EXACT = 1e-12;

    private static OperatingState set(String component, Setting setting) {
        return HarnessSketch.state().with(new ComponentId(component), setting);
    }

    private static Law lawOf(HarnessSketch sketch, String id, Setting setting) {
        return branch(sketch.network(set("D", setting)), id).law();
    }

    @Test
    void anAlternatorGivesNothingUnlessTheStateSaysItRuns() {
        HarnessSketch sketch = new HarnessSketch().component("ALT1", new Alternator(14.2, 0.01, 90));
        assertEquals(new Law.Open(), branch(sketch.network(), "ALT1").law());
        Network on = sketch.network(HarnessSketch.state().withSource(new ComponentId("ALT1"), true));
        assertEquals(
                new Law.VoltageSource(14.2, 0.01, 0, 90), branch(on, "ALT1").law());
    }

    @Test
    void aConverterWithCommonReturnHasOneNegativePoint() {
        Network network = new HarnessSketch()
                .component("CONV1", new Converter(12, 0.01, 10, 0.9, false))
                .component("CONV2", new Converter(12, 0.01, 10, 0.9, true))
                .network();
        assertEquals("CONV1.in- to CONV1.out+", ends(network, "CONV1.out"));
        assertEquals("CONV2.out- to CONV2.out+", ends(network, "CONV2.out"));
        assertEquals(
                new Law.PowerOf(new BranchId("CONV1.out"), 0.9),
                branch(network, "CONV1.in").law());
    }

    @Test
    void aSwitchClosesOnlyTheChosenPosition() {
        HarnessSketch sketch = new HarnessSketch().component("D", new Switch(List.of("2", "3"), 0.02, 10));
        assertEquals(new Law.Open(), branch(sketch.network(), "D.1-2").law());
        assertEquals(new Law.Resistance(0.02), lawOf(sketch, "D.1-2", Setting.ON));
        assertEquals(new Law.Open(), lawOf(sketch, "D.1-3", Setting.ON));
        assertEquals(new Law.Open(), lawOf(sketch, "D.1-2", Setting.at("3")));
        assertEquals(new Law.Resistance(0.02), lawOf(sketch, "D.1-3", Setting.at("3")));
        assertEquals(
                new Law.SwitchedResistance(0.02, new Pulse("D", 100, 0, 0.25)),
                lawOf(sketch, "D.1-2", Setting.duty(0.25)));
        // a position it does not have leaves it open, and that is said
        Network wrong = sketch.network(set("D", Setting.at("9")));
        assertEquals(new Law.Open(), branch(wrong, "D.1-2").law());
        assertTrue(wrong.assumptions().get(0).text().contains("has no position 9"));
    }

    @Test
    void aRelaysContactsFollowItsCoil() {
        Network network = new HarnessSketch()
                .component("K1", new Relay(90, 7.2, 1.2, 0.005, 30, true))
                .network();
        assertEquals("K1.86 to K1.85", ends(network, "K1.coil"));
        assertEquals("K1.30 to K1.87", ends(network, "K1.30-87"));
        BranchId coil = new BranchId("K1.coil");
        assertEquals(
                new Law.CoilOperated(coil, 7.2, 1.2, 0.005, false),
                branch(network, "K1.30-87").law());
        assertEquals(
                new Law.CoilOperated(coil, 7.2, 1.2, 0.005, true),
                branch(network, "K1.30-87a").law());
    }

    @Test
    void aSolidStateOutputSwitchesAtItsDuty() {
        HarnessSketch sketch = new HarnessSketch().component("D", new SolidStateOutput(0.01, 20));
        assertEquals(new Law.Open(), branch(sketch.network(), "D").law());
        assertEquals(
                new Law.SwitchedResistance(0.01, new Pulse("D", 100, 0, 0.4)), lawOf(sketch, "D", Setting.duty(0.4)));
    }

    @Test
    void anIsolatorIsOneDiodeForEachBattery() {
        Network network = new HarnessSketch()
                .component("ISO1", new BatteryIsolator(2, 0.7, 0.005, 100))
                .network();
        assertEquals("ISO1.in to ISO1.out2", ends(network, "ISO1.in-out2"));
        assertEquals(
                new Law.Threshold(0.7, 0.005), branch(network, "ISO1.in-out1").law());
    }

    @Test
    void aFuseTakesItsMeasuredThenItsListedThenTheUsualResistance() {
        ProtectiveDevice.Kind fuse = ProtectiveDevice.Kind.FUSE;
        String type = "ISO 8820-3 type C";
        HarnessSketch sketch = new HarnessSketch()
                .component("F1", new ProtectiveDevice(fuse, type, 10, OptionalDouble.of(0.008)))
                .component("F2", new ProtectiveDevice(fuse, type, 40, OptionalDouble.empty()))
                .component("F3", new ProtectiveDevice(fuse, "no such type", 20, OptionalDouble.empty()));
        Network network =
                NetworkBuilder.build(sketch.harness(), set("F1", Setting.ON), wire -> 0.1, WireTables.bundled());
        assertEquals(new Law.Resistance(0.008), branch(network, "F1").law());
        // 1.44 milliohm: fuse-resistance table, ISO 8820-3 type C, 40 A, published
        assertEquals(0.00144, ((Law.Resistance) branch(network, "F2").law()).ohms(), EXACT);
        // 0.1 V / 20 A = 5 milliohm, common practice
        assertEquals(0.005, ((Law.Resistance) branch(network, "F3").law()).ohms(), EXACT);
        assertTrue(network.assumptions().get(0).source().startsWith("ISO 8820-3"));
        assertEquals(Assumption.COMMON_PRACTICE, network.assumptions().get(1).source());
        assertEquals(
                new Law.Open(),
                branch(sketch.network(set("F1", Setting.OFF)), "F1").law());
    }

    @Test
    void loadsUnderFeedDrawAtAnyTimeLoadsUnderCommandWhenAsked() {
        Draw.Motor motor = new Draw.Motor(10, 40, 12);
        HarnessSketch feed = new HarnessSketch().component("D", Load.of(motor));
        HarnessSketch command =
                new HarnessSketch().component("D", new Load(motor, Load.Control.COMMAND, OptionalDouble.empty()));
        assertEquals(new Law.ConstantCurrent(10), branch(feed.network(), "D").law());
        assertEquals(new Law.Open(), branch(command.network(), "D").law());
        assertEquals(new Law.ConstantCurrent(10), lawOf(command, "D", Setting.ON));
        // a fan commanded to a quarter takes a quarter of its current, continuously
        assertEquals(new Law.ConstantCurrent(2.5), lawOf(command, "D", Setting.duty(0.25)));
        // at standstill 12 V / 40 A = 0.3 ohm
        assertEquals(new Law.Resistance(0.3), lawOf(command, "D", Setting.start()));
        assertEquals(new Law.Resistance(0.3), lawOf(feed, "D", Setting.start()));
    }

    @Test
    void eachDrawHasItsLaw() {
        assertEquals(new Law.ConstantPower(60), lawOf(load(new Draw.ConstantPower(60, 12)), "D", Setting.ON));
        // 55 W at 12.5 V: 4.4 A
        assertEquals(new Law.PowerLaw(4.4, 12.5, 0.55), lawOf(load(new Draw.Lamp(55, 12.5)), "D", Setting.ON));
        // a thermostat on a 12 V, 2 A heater: 6 ohm for three quarters of the time
        assertEquals(
                new Law.Cycled(new Law.Resistance(6), new Pulse("D", 1.0 / 60, 0, 0.75)),
                lawOf(load(new Draw.Resistive(2, 12)), "D", Setting.duty(0.75)));
    }

    private static HarnessSketch load(Draw draw) {
        return new HarnessSketch().component("D", Load.of(draw));
    }

    @Test
    void aSensorTakesItsSupplyAndShowsItsSignalResistance() {
        Network network = new HarnessSketch()
                .component("P1", new Sensor(Sensor.Kind.RATIOMETRIC, 0.008, OptionalDouble.empty()))
                .component("T1", new Sensor(Sensor.Kind.THERMISTOR, 0, OptionalDouble.of(2500)))
                .network();
        assertEquals("P1.supply to P1.return", ends(network, "P1.supply"));
        assertEquals(
                new Law.ConstantCurrent(0.008), branch(network, "P1.supply").law());
        assertEquals("T1.signal to T1.return", ends(network, "T1.signal"));
        assertEquals(2, network.branches().size());
    }

    @Test
    void theTerminalsOfABusBarMeetAtTheBar() {
        Network network = new HarnessSketch()
                .component("BUS1", new BusBar(List.of("a", "b"), 0.0001))
                .component("BUS2", new BusBar(List.of("a", "b"), 0))
                .network();
        assertEquals("BUS1.a to BUS1", ends(network, "BUS1.a"));
        assertEquals(network.index().at("BUS2.a"), network.index().at("BUS2.b"));
        assertEquals(2, network.branches().size());
    }
}
