package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.ohmloom.solve.Solved.near;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;

/** What reaches a load: feed drop, return drop, and the portions in contacts and devices. */
@BesideOthers
class LoadVoltsStudyTest {

    private static Harness harness(String... loads) {
        Harness harness = Harnesses.empty();
        for (String load : loads) {
            harness = harness.with(Component.of(load, load, Load.of(new Draw.Resistive(1, 12))));
        }
        return harness;
    }

    private static LoadVolts study(Net net, String load) {
        return LoadVoltsStudy.of(net.solve().solution(), harness("L", "M")).get(new ComponentId(load));
    }

    /** 12 V; fuse 10, wire 20, contact 5, load 1925, contact 5, wire 30, joint 5 mohm: 2 ohm in all, 6 A. */
    private static Net simple() {
        return new Net()
                .battery("B", "0", "t", 12, 0)
                .branch("F", BranchKind.FUSE, "t", "a", new Law.Resistance(0.01))
                .wire("W1", "a", "b", 0.02)
                .branch("X.1", BranchKind.CONTACT, "b", "p", new Law.Resistance(0.005))
                .heater("L", "p", "n", 1.925)
                .branch("X.2", BranchKind.CONTACT, "n", "c", new Law.Resistance(0.005))
                .wire("W2", "d", "c", 0.03)
                .branch("G.W2", BranchKind.JOINT, "d", "0", new Law.Resistance(0.005));
    }

    @Test
    void dropsAreSplitIntoFeedAndReturnAndIntoContactsAndDevices() {
        LoadVolts load = study(simple(), "L");
        near(6, load.amps(), "current");
        near(11.55, load.volts(), "6 A x 1.925 ohm");
        near(0.21, load.feedDropVolts(), "6 A x 35 mohm");
        near(0.24, load.returnDropVolts(), "6 A x 40 mohm");
        near(0.09, load.contactDropVolts(), "6 A x 15 mohm");
        near(0.06, load.deviceDropVolts(), "6 A x 10 mohm");
        near(12 - load.volts(), load.dropVolts(), "feed + return");
        near(0.45, load.onDropVolts(), "nothing switches");
        assertEquals(new ComponentId("B"), load.reference());
        assertEquals(List.of(new BranchId("F"), new BranchId("W1"), new BranchId("X.1")), load.feedPath());
        assertEquals(List.of(new BranchId("X.2"), new BranchId("W2"), new BranchId("G.W2")), load.returnPath());
    }

    @Test
    void theLimitIsTheLoadsOwnOrThatOfTheRules() {
        Harness rules = harness("L");
        Harness own = rules.with(Component.of(
                "L", "Lamp", new Load(new Draw.Resistive(1, 12), Load.Control.FEED, OptionalDouble.of(0.4))));
        NetworkSolution solution = simple().solve().solution();
        near(
                rules.rules().allowedDropVolts(),
                LoadVoltsStudy.of(solution, rules).get(new ComponentId("L")).limitVolts(),
                "limit of the rules");
        near(0.4, LoadVoltsStudy.of(solution, own).get(new ComponentId("L")).limitVolts(), "own limit");
    }

    @Test
    void theDropIsMeasuredFromTheSourceThatFeeds() {
        // alternator 14 V, 100 mohm cable, battery charged through 200 mohm; load of 2 A
        Net net = new Net()
                .battery("B", "0", "b", 12, 0)
                .wire("W2", "a", "b", 0.2)
                .regulated("G", "0", "g", 14, 0, 100)
                .wire("W1", "g", "a", 0.1)
                .current("L", "a", "0", 2);
        // (14 - V)/0.1 = 2 + (V - 12)/0.2: 140 - 10 V = 2 + 5 V - 60, V = 13.2
        LoadVolts load = study(net, "L");
        assertEquals(new ComponentId("G"), load.reference());
        near(0.8, load.feedDropVolts(), "14 - 13.2");
        assertEquals(List.of(new BranchId("W1")), load.feedPath());
    }

    @Test
    void behindAConverterTheDropIsMeasuredFromItsOutput() {
        Net net = new Net()
                .battery("B", "0", "t", 12, 0)
                .branch("U.out", BranchKind.REGULATED_OUTPUT, "g", "p", Law.VoltageSource.regulated(5, 0, 10))
                .branch("U.in", BranchKind.REGULATED_INPUT, "t", "g", new Law.PowerOf(new BranchId("U.out"), 0.8))
                .wire("G", "g", "0", 0.05)
                .wire("W1", "p", "q", 0.1)
                .current("L", "q", "g", 1)
                .current("M", "t", "g", 20);
        LoadVolts load = study(net, "L");
        assertEquals(new ComponentId("U"), load.reference());
        near(0.1, load.dropVolts(), "1 A x 0.1 ohm");
        near(4.9, load.volts(), "5 V - 0.1 V");
        assertEquals(List.of(), load.returnPath());
    }

    @Test
    void aStackOfBatteriesIsOneSource() {
        Net net = new Net()
                .battery("B1", "0", "m", 12, 0)
                .battery("B2", "m", "t", 12, 0)
                .wire("W1", "t", "p", 0.5)
                .heater("L", "p", "n", 11)
                .wire("W2", "n", "0", 0.5);
        LoadVolts load = study(net, "L");
        near(2, load.amps(), "24 V over 12 ohm");
        near(1, load.feedDropVolts(), "2 A x 0.5 ohm");
        near(1, load.returnDropVolts(), "2 A x 0.5 ohm");
        assertEquals(new ComponentId("B2"), load.reference());
    }

    @Test
    void aLoadInALoopOfWiresHasItsPathAlongTheLargerShare() {
        Net net = new Net()
                .battery("B", "0", "t", 12, 0)
                .wire("W1", "t", "a", 0.1)
                .wire("W2", "t", "b", 0.1)
                .wire("W3", "a", "p", 0.1)
                .wire("W4", "b", "p", 0.3)
                .wire("W5", "a", "b", 1)
                .current("L", "p", "0", 6);
        LoadVolts load = study(net, "L");
        assertEquals(List.of(new BranchId("W1"), new BranchId("W3")), load.feedPath());
        near(12 - load.volts(), load.feedDropVolts(), "whatever the path");
    }

    @Test
    void onStateValuesAreThoseWithEveryOutputOn() {
        // 12 V, 1 ohm feed, 0.5 + 4.5 ohm at a duty of 0.5: 2 A on, drop on = 3 V, mean load voltage 4.5 V
        Net net = new Net()
                .battery("B", "0", "t", 12, 0)
                .wire("W", "t", "a", 1)
                .output("Q", "a", "p", 0.5, 0.5)
                .heater("L", "p", "0", 4.5);
        LoadVolts load = study(net, "L");
        near(1, load.amps(), "mean");
        near(4.5, load.volts(), "mean");
        near(9, load.onVolts(), "on-state");
        near(3, load.onDropVolts(), "on-state drop");
    }

    @Test
    void aLoadThatIsSwitchedOffIsListedWithItsReferenceAndOneWithoutVoltagesIsNot() {
        Net net = new Net()
                .battery("B", "0", "t", 12, 0)
                .open("S", "t", "p")
                .heater("L", "p", "0", 4)
                .open("S2", "t", "x")
                .heater("M", "x", "y", 4);
        LoadVolts load = study(net, "L");
        assertEquals(new ComponentId("B"), load.reference());
        near(0, load.amps(), "off");
        near(12, load.feedDropVolts(), "all of it over the switch");
        assertFalse(LoadVoltsStudy.of(net.solve().solution(), harness("L", "M")).containsKey(new ComponentId("M")));
    }

    @Test
    void aLoadWiredTheWrongWayRoundStillHasPositiveDrops() {
        Net net = new Net()
                .battery("B", "0", "t", 12, 0)
                .wire("W1", "t", "a", 0.5)
                .heater("L", "0", "a", 5.5);
        LoadVolts load = study(net, "L");
        near(2, load.amps(), "current");
        near(11, load.volts(), "voltage");
        near(1, load.feedDropVolts(), "drop");
    }
}
