package org.ohmloom.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ohmloom.graph.SwitchedLoads.SwitchedLoad;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.BatteryIsolator;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Diode;
import org.ohmloom.model.SolidStateOutput;

/** Which loads an output switches, on a battery with two outputs: Q1 in the feed of L1, Q2 in the return of L2; L3 on its own. */
class SwitchedLoadsTest {

    private static final Network NETWORK = new HarnessSketch()
            .battery("BAT1", 12, 0.01)
            .fuse("F1", 20, 0.004)
            .component("Q1", new SolidStateOutput(0.01, 20))
            .component("Q2", new SolidStateOutput(0.01, 20))
            .load("L1", 10, 12)
            .load("L2", 10, 12)
            .load("L3", 10, 12)
            .run("W1", "BAT1.+", "F1.1", 1)
            .run("W2", "F1.2", "Q1.in", 1)
            .run("W3", "Q1.out", "L1.+", 1)
            .run("W4", "L1.-", "BAT1.-", 1)
            .run("W5", "F1.2", "L2.+", 1)
            .run("W6", "L2.-", "Q2.in", 1)
            .run("W7", "Q2.out", "BAT1.-", 1)
            .run("W8", "F1.2", "L3.+", 1)
            .run("W9", "L3.-", "BAT1.-", 1)
            .network();

    private static String text(SwitchedLoad each) {
        return each.output() + " switches " + each.load() + (each.highSide() ? " in its feed" : " in its return")
                + ", feed " + each.feedWires() + ", return " + each.returnWires();
    }

    @Test
    void anOutputSwitchesTheLoadsThatReachASourceOnlyThroughIt() {
        assertEquals(
                List.of(
                        "Q1 switches L1 in its feed, feed [W2, W3], return []",
                        "Q2 switches L2 in its return, feed [W5], return [W6]"),
                SwitchedLoads.of(NETWORK).stream().map(SwitchedLoadsTest::text).collect(Collectors.toList()));
    }

    @Test
    void aStandingFeedBeginsAtTheProtectiveDevice() {
        assertEquals("[W8]", SwitchedLoads.feed(NETWORK, new ComponentId("L3")).toString());
    }

    @Test
    void aLoadWithASecondReturnIsNotSwitchedInItsReturn() {
        Network second = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .component("Q2", new SolidStateOutput(0.01, 20))
                .load("L2", 10, 12)
                .run("W5", "BAT1.+", "L2.+", 1)
                .run("W6", "L2.-", "Q2.in", 1)
                .run("W7", "Q2.out", "BAT1.-", 1)
                .run("W10", "L2.-", "BAT1.-", 1)
                .network();
        assertEquals(List.of(), SwitchedLoads.of(second));
    }

    /** An alternator that feeds two banks through an isolator; the second bank's battery stands elsewhere. */
    private static HarnessSketch isolated() {
        return new HarnessSketch()
                .component("ALT1", alternator())
                .component("ISO1", new BatteryIsolator(2, 0.3, 0.002, 80))
                .battery("BAT1", 12, 0.01)
                .fuse("F2", 20, 0.004)
                .component("Q1", new SolidStateOutput(0.01, 20))
                .load("L1", 10, 12)
                .run("W1", "ALT1.+", "ISO1.in", 1)
                .run("W2", "ISO1.out1", "BAT1.+", 1)
                .run("W3", "ISO1.out2", "F2.1", 1)
                .run("W4", "F2.2", "Q1.in", 1)
                .run("W5", "Q1.out", "L1.+", 1)
                .run("W6", "L1.-", "BAT1.-", 1)
                .run("W7", "ALT1.-", "BAT1.-", 1);
    }

    private static Alternator alternator() {
        return new Alternator(14.2, 0.01, 90);
    }

    @Test
    void aBatteryIsolatorLeadsFromItsInputToItsOutputs() {
        // only the alternator feeds L1: current goes in -> out2; BAT1 stands behind out1 and cannot come back through
        // in
        assertEquals(
                List.of("Q1 switches L1 in its feed, feed [W4, W5], return []"),
                SwitchedLoads.of(isolated().network()).stream()
                        .map(SwitchedLoadsTest::text)
                        .collect(Collectors.toList()));
    }

    @Test
    void nothingComesBackThroughABatteryIsolator() {
        // without the alternator the only source is BAT1 on out1: out1 -> in is blocked, so L1 has no feed at all
        Network batteryOnly = new HarnessSketch()
                .component("ISO1", new BatteryIsolator(2, 0.3, 0.002, 80))
                .battery("BAT1", 12, 0.01)
                .component("Q1", new SolidStateOutput(0.01, 20))
                .load("L1", 10, 12)
                .run("W2", "ISO1.out1", "BAT1.+", 1)
                .run("W3", "ISO1.out2", "Q1.in", 1)
                .run("W5", "Q1.out", "L1.+", 1)
                .run("W6", "L1.-", "BAT1.-", 1)
                .network();
        assertEquals(List.of(), SwitchedLoads.of(batteryOnly));
        assertEquals(List.of(), SwitchedLoads.feed(batteryOnly, new ComponentId("L1")));
    }

    @Test
    void aFreewheelDiodeDrawnAcrossALoadFeedsNothing() {
        // the cathode lies on the load's plus: positives reach it, but not through it, and Q2 in the return still
        // switches
        Network drawn = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .component("Q2", new SolidStateOutput(0.01, 20))
                .component("D1", new Diode(0.7, 0.01, 10))
                .load("L2", 10, 12)
                .run("W5", "BAT1.+", "L2.+", 1)
                .run("W6", "L2.-", "Q2.in", 1)
                .run("W7", "Q2.out", "BAT1.-", 1)
                .run("W8", "L2.-", "D1." + Diode.ANODE, 1)
                .run("W9", "D1." + Diode.CATHODE, "L2.+", 1)
                .network();
        assertEquals(
                List.of("Q2 switches L2 in its return, feed [W5], return [W6]"),
                SwitchedLoads.of(drawn).stream().map(SwitchedLoadsTest::text).collect(Collectors.toList()));
    }
}
