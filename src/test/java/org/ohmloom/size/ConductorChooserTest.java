package org.ohmloom.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/** Conductors chosen by hand: one load, a fuse and two wires in series. */
@BesideOthers
class ConductorChooserTest {
    private static final double METRES_PER_FOOT = 0.3048;

    private static DesignRules road() {
        return new DesignRules(
                "road-vehicle", 12, 0.05, GaugeSystem.METRIC, "ISO 6722-1 class B", Optional.empty(), 30);
    }

    private static DesignRules craft() {
        return new DesignRules("33-cfr-183", 12, 0.1, GaugeSystem.AWG, "105C", Optional.empty(), 30);
    }

    private static ConductorChoice choose(FedLoad fed, String wire) {
        SizingInput input = fed.input(fed.largest());
        Wire chosen = input.harness().wires().get(new WireId(wire));
        return new ConductorChooser(input).choose(chosen);
    }

    private static Optional<Gauge> asked(ConductorChoice choice, Governor governor) {
        return choice.requirements().get(governor.ordinal()).smallest();
    }

    @Test
    void voltageDropIsSharedInProportionToLength() {
        // 10 A, 0.6 V allowed, the fuse loses 0.1 V: 0.5 V for 2 m + 3 m is 0.1 V per metre, 10 mohm/m at 10 A.
        // ISO 6722-1: 2 mm2 has 9.42 mohm/m at 20 C, but at 10 A of its 30.2 A (1.5 mm2 row, 100 C, 30 C air) it runs
        // at
        // 30 + 70 x (10/30.2)^2 = 37.7 C: x (234.5 + 37.7)/254.5 = 10.07 mohm/m, too much. 2.5 mm2: 7.6 x 1.056 = 8.03.
        FedLoad fed = new FedLoad(road(), 10, 0.6, 0.1, FedLoad.fuse(15))
                .wire("W1", 2)
                .wire("W2", 3);
        for (String wire : List.of("W1", "W2")) {
            ConductorChoice choice = choose(fed, wire);
            assertEquals(Optional.of(Gauge.metric(2.5)), choice.gauge());
            assertEquals(Governor.VOLTAGE_DROP, choice.governing().governor());
            // DIN VDE 0298-4 rows for 100 C: 0.35 mm2 10.7 A carries 10 A; 0.75 mm2 18.9 A suits 15 A, 0.5 mm2 13.8 A
            // not
            assertEquals(Optional.of(Gauge.metric(0.35)), asked(choice, Governor.AMPACITY));
            assertEquals(Optional.of(Gauge.metric(0.75)), asked(choice, Governor.PROTECTION));
            assertEquals(Optional.of(Gauge.metric(0.35)), asked(choice, Governor.MECHANICAL));
        }
        String reason = choose(fed, "W1").governing().reason();
        assertTrue(reason.contains("may lose 600 mV") && reason.contains("500 mV for 5 m"), reason);
        assertTrue(reason.endsWith("row 2.5 mm2 (from memory)"), reason);
    }

    @Test
    void tableElevenSevenRowOneComesOutOfTheWholeChoice() {
        // FAA AC 43.13-1B CHG 1 Table 11-7 row 1: 28 V, 1 V allowed, 107 ft, 20 A: No. 6.
        // 150 C wire in 20 C air: 6 AWG may carry 76 x sqrt(130/80) = 96.9 A, runs at 20 + 130 x (20/96.9)^2 = 25.5 C,
        // so it loses 0.9416 x 260/254.5 = 0.962 V.
        DesignRules rules =
                new DesignRules("ac-43.13-1b", 28, 0.05, GaugeSystem.AWG, "AS22759/16", Optional.empty(), 20);
        FedLoad fed = new FedLoad(rules, 20, 1, 0, FedLoad.fuse(25)).wire("W1", 107 * METRES_PER_FOOT);
        ConductorChoice choice = choose(fed, "W1");
        assertEquals(Optional.of(Gauge.awg(6)), choice.gauge());
        assertEquals(Governor.VOLTAGE_DROP, choice.governing().governor());
        // Table 11-3: a 25 A fuse needs 10 AWG (30 A), 12 AWG has 20 A; Table 11-9 alone would be content with
        // 12 AWG, 19 x sqrt(130/80) = 24.2 A being too little: 10 AWG, 26 x 1.275 = 33.1 A
        assertEquals(Optional.of(Gauge.awg(10)), asked(choice, Governor.PROTECTION));
    }

    @Test
    void aSizedWireIsTakenAsItIsAndTheOtherGetsTheRest() {
        // W1, 3 m of 1.5 mm2: 10 x 0.0127 x 3 = 0.381 V; fuse 0.1 V: 0.119 V left for 2 m, 5.95 mohm/m.
        // 3 mm2 has 6.15 mohm/m at 20 C, 4 mm2 has 4.71.
        FedLoad fed = new FedLoad(road(), 10, 0.6, 0.1, FedLoad.fuse(15))
                .wire("W1", 3, Gauge.metric(1.5), false)
                .wire("W2", 2);
        assertEquals(Optional.of(Gauge.metric(4)), choose(fed, "W2").gauge());
        // W1 itself, the load being within its limit, may use what the others leave: 0.6 - 0.1 - 0.003 V over 3 m is
        // 16.6 mohm/m; 1.25 mm2 has 14.9 x 1.09 = 16.2 (42 C), 1 mm2 18.5
        assertEquals(Optional.of(Gauge.metric(1.25)), choose(fed, "W1").gauge());
    }

    @Test
    void whenTheLoadLosesTooMuchEveryWireThatMayChangeShares() {
        FedLoad fed = new FedLoad(road(), 10, 0.6, 0.1, FedLoad.fuse(10))
                .wire("W1", 2, Gauge.metric(0.5), false)
                .wire("W2", 3, Gauge.metric(4), false);
        // 0.742 + 0.1413 + 0.1 V lost: 0.1 V per metre for both, as if neither had a size
        assertEquals(Optional.of(Gauge.metric(2.5)), choose(fed, "W1").gauge());
        assertEquals(Optional.of(Gauge.metric(2.5)), choose(fed, "W2").gauge());
    }

    @Test
    void anExistingWireIsNeverSharedTo() {
        // W1 stays with its 0.742 V, more than the 0.6 V allowed: nothing is left for W2
        FedLoad fed = new FedLoad(road(), 10, 0.6, 0.1, FedLoad.fuse(10))
                .wire("W1", 2, Gauge.metric(0.5), true)
                .wire("W2", 3);
        ConductorChoice choice = choose(fed, "W2");
        assertTrue(choice.gauge().isEmpty());
        assertEquals(Governor.VOLTAGE_DROP, choice.governing().governor());
        assertTrue(choice.governing().reason().contains("nothing is left for any size"));
    }

    @Test
    void theFuseGovernsAShortWire() {
        // 33 CFR 183.455(c)(1): 150 % of Table 5 below 50 V. 105 C insulation: 16 AWG 25 A allows 37.5 A, so a 35 A
        // fuse;
        // a 40 A fuse needs 26.7 A: 14 AWG, 35 A
        FedLoad small = new FedLoad(craft(), 10, 1.2, 0.05, FedLoad.fuse(35)).wire("W1", 0.5);
        ConductorChoice choice = choose(small, "W1");
        assertEquals(Optional.of(Gauge.awg(16)), choice.gauge());
        FedLoad large = new FedLoad(craft(), 10, 1.2, 0.05, FedLoad.fuse(40)).wire("W1", 0.5);
        ConductorChoice thicker = choose(large, "W1");
        assertEquals(Optional.of(Gauge.awg(14)), thicker.gauge());
        assertEquals(Governor.PROTECTION, thicker.governing().governor());
        assertTrue(
                thicker.governing().reason().contains("33 CFR 183.455"),
                thicker.governing().reason());
    }

    @Test
    void aReturnBearsWhatTheFuseOfItsOnlyLoadLetsThrough() {
        // 2 A, but a 15 A fuse: 0.75 mm2 (18.9 A) on the feed and on the way back
        FedLoad fed = new FedLoad(road(), 2, 0.6, 0.02, FedLoad.fuse(15)).wire("R1", 0.5);
        SizingInput input = fed.input(fed.largest(), UpstreamDevices.NONE);
        ConductorChoice choice = new ConductorChooser(input).chooseAll().get(new WireId("R1"));
        assertEquals(Optional.of(Gauge.metric(0.75)), choice.gauge());
        assertTrue(choice.governing().reason().startsWith("relies on F, 15 A"));
        assertEquals(List.of(FedLoad.FUSE), choice.governing().devices());
    }

    @Test
    void theMechanicalMinimumGovernsAShortWireWithLittleCurrent() {
        // 33 CFR 183.425: no single conductor below 16 AWG
        FedLoad fed = new FedLoad(craft(), 1, 1.2, 0.05, FedLoad.fuse(2)).wire("W1", 0.5);
        ConductorChoice choice = choose(fed, "W1");
        assertEquals(Optional.of(Gauge.awg(16)), choice.gauge());
        assertEquals(Governor.MECHANICAL, choice.governing().governor());
    }

    @Test
    void theDesignRulesOwnMinimumComesFirst() {
        DesignRules rules =
                new DesignRules("33-cfr-183", 12, 0.1, GaugeSystem.AWG, "105C", Optional.of(Gauge.metric(2.5)), 30);
        FedLoad fed = new FedLoad(rules, 1, 1.2, 0.05, FedLoad.fuse(2)).wire("W1", 0.5);
        // 14 AWG is 2.08 mm2, 12 AWG 3.31 mm2
        assertEquals(Optional.of(Gauge.awg(12)), choose(fed, "W1").gauge());
    }

    @Test
    void aCurrentNoSizeCarriesLeavesTheChoiceOpen() {
        // 33 CFR 183.425 Table 5 ends at 4/0 AWG, 445 A with 105 C insulation
        FedLoad fed = new FedLoad(craft(), 500, 6, 0, FedLoad.fuse(40)).wire("W1", 0.5);
        ConductorChoice choice = choose(fed, "W1");
        assertTrue(choice.gauge().isEmpty());
        assertEquals(Governor.AMPACITY, choice.governing().governor());
        assertTrue(
                choice.governing().reason().contains("445 A"),
                choice.governing().reason());
    }

    @Test
    void anInsulationWithoutAnAmpacitySaysSo() {
        DesignRules rules = new DesignRules("33-cfr-183", 12, 0.1, GaugeSystem.AWG, "invented", Optional.empty(), 30);
        FedLoad fed = new FedLoad(rules, 10, 1.2, 0, FedLoad.fuse(15)).wire("W1", 0.5);
        ConductorChoice choice = choose(fed, "W1");
        assertTrue(choice.gauge().isEmpty());
        assertTrue(choice.governing().reason().contains("no current for insulation invented"));
    }

    @Test
    void solvingAndGrowingAgreeAndTheLoadKeepsItsLimit() {
        FedLoad fed = new FedLoad(road(), 18, 0.36, 0.08, FedLoad.fuse(25))
                .wire("W1", 1.4)
                .wire("W2", 2.2);
        ProvisionalSizes sizes = fed.minimum().grow(new ConductorChooser(fed.input(fed.largest())).chooseAll());
        ProvisionalSizes next = sizes.grow(new ConductorChooser(fed.input(sizes)).chooseAll());
        assertEquals(sizes, next, "nothing changes in the second round");
        double lost = fed.input(next)
                .solutions()
                .get(FedLoad.STATE)
                .loads()
                .get(FedLoad.LOAD)
                .onDropVolts();
        assertTrue(lost <= 0.36, "lost " + lost + " V");
    }
}
