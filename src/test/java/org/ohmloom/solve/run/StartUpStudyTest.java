package org.ohmloom.solve.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.AlternatorModel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Draw.MagnetMotor.Torque;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Setting;
import org.ohmloom.model.WireEnd;
import org.ohmloom.tables.WireTables;

/** What a start does to everything else. */
@BesideOthers
class StartUpStudyTest {

    private static final double EXACT = 1e-6;

    /** A 0.1 ohm battery feeds a pump of 10 A that starts with 40 A over 200 ms, and a load that needs some voltage. */
    private static HarnessSketch pumpAnd(double minimumVolts) {
        return new HarnessSketch()
                .battery("BT1", 12, 0.1)
                .fuse("F1", 15, 1e-9)
                .component("P1", Started.peak(new Draw.Motor(10, 40, 12), 40, 0.2))
                .component("L1", Started.from(new Draw.Resistive(1, 12), minimumVolts))
                .wire("W1", "BT1.+", "F1.1", 1e-9)
                .wire("W2", "F1.2", "P1.+", 1e-9)
                .wire("W3", "P1.-", "BT1.-", 1e-9)
                .wire("W4", "BT1.+", "L1.+", 1e-9)
                .wire("W5", "L1.-", "BT1.-", 1e-9);
    }

    /** Voltage of the battery above at a time of the start: 12 - V over 0.1 ohm = V / 12 + (1 - f) 10 + f V / 0.3. */
    private static double volts(double fading) {
        return (120 - 10 * (1 - fading)) / (10 + 1.0 / 12 + fading / 0.3);
    }

    @Test
    void anotherLoadSeesTheSupplyFallAndComeBack() {
        // f = 1: 120 / 13.4167 = 8.944 V; before: 120 / 10.0833 = 11.90 V
        StartUp run = Started.of(pumpAnd(9.5), "P1", "L1").run("P1");
        SupplySag sag = run.sag(new ComponentId("L1")).orElseThrow();
        assertEquals(120 / (10 + 1.0 / 12), sag.beforeVolts(), EXACT);
        assertEquals(volts(1), sag.lowestVolts(), EXACT);
        assertEquals(0, sag.lowestSeconds());
        assertTrue(sag.isTooLow());
        for (double seconds : Started.instants(run, 50)) {
            assertEquals(
                    volts(Math.exp(-seconds / 0.2)),
                    Started.at(run, sag.volts(), seconds),
                    12 * StartUp.SERIES_ERROR_SHARE);
        }
    }

    @Test
    void theTimeBelowTheMinimumIsThatOfTheClosedForm() {
        // V(f) = 9.5: 110 + 10 f = 9.5 (10.0833 + f / 0.3): f = (110 - 95.79) / (31.667 - 10) = 0.6558; t = -0.2 ln f
        double fading = (110 - 9.5 * (10 + 1.0 / 12)) / (9.5 / 0.3 - 10);
        SupplySag sag = Started.of(pumpAnd(9.5), "P1", "L1")
                .run("P1")
                .sag(new ComponentId("L1"))
                .orElseThrow();
        assertEquals(-0.2 * Math.log(fading), sag.belowSeconds(), 2e-3);
        assertFalse(sag.belowAtEnd());
    }

    @Test
    void aMinimumThatHoldsIsNotTooLow() {
        SupplySag sag = Started.of(pumpAnd(8.9), "P1", "L1")
                .run("P1")
                .sag(new ComponentId("L1"))
                .orElseThrow();
        assertFalse(sag.isTooLow());
        assertEquals(0, sag.belowSeconds());
    }

    @Test
    void aRelayThatWouldDropOutIsNamedWithItsTime() {
        // the coil sees what the load sees; below 10 V while f > (110 - 100.83) / (33.33 - 10) = 0.393: from the start
        // on
        HarnessSketch sketch = pumpAnd(8)
                .component("K1", new Relay(1000, 10.5, 10, 0.001, 30, false))
                .load("L2", 1, 12)
                .wire("W6", "BT1.+", "K1.86", 1e-9)
                .wire("W7", "K1.85", "BT1.-", 1e-9)
                .wire("W8", "BT1.+", "K1.30", 1e-9)
                .wire("W9", "K1.87", "L2.+", 1e-9)
                .wire("W10", "L2.-", "BT1.-", 1e-9);
        List<RelayDropOut> dropOuts =
                Started.of(sketch, "P1", "L1", "L2").run("P1").dropOuts();
        assertEquals(1, dropOuts.size());
        assertEquals(new ComponentId("K1"), dropOuts.get(0).relay());
        assertEquals(0, dropOuts.get(0).atSeconds());
        assertTrue(dropOuts.get(0).lowestVolts() < 9);
    }

    @Test
    void aStartThatMovesNothingIsLeftOutAndSaid() {
        // 0.1 A at 12 V rises to 0.2 A: 10 mV of 12 V are less than half a per cent
        HarnessSketch sketch = new HarnessSketch()
                .battery("BT1", 12, 0.1)
                .component("L1", Started.peak(new Draw.Resistive(0.1, 12), 0.2, 0.1))
                .load("L2", 1, 12)
                .wire("W1", "BT1.+", "L1.+", 1e-9)
                .wire("W2", "L1.-", "BT1.-", 1e-9)
                .wire("W3", "BT1.+", "L2.+", 1e-9)
                .wire("W4", "L2.-", "BT1.-", 1e-9);
        StartUps all = Started.of(sketch, "L1", "L2").all();
        assertEquals(List.of(), all.runs());
        assertEquals(List.of(new ComponentId("L1")), all.skipped().get(0).starters());
        assertTrue(all.skipped().get(0).reason().english().startsWith("Left out: at the first instant"));
    }

    @Test
    void runningMotorsSlowDownWithTheSupplyAndTakeLessAtFirst() {
        // M1 runs: 12 V behind 0.1 ohm, 5 A, R 0.3 ohm, E0 n = V - 1.5. At the first instant of P1 (0.3 ohm) its speed
        // is still that, so with E = 11.5 - 1.5 = 10 V: (12 - V) / 0.1 = V / 0.3 + max(0, (V - 10) / 0.3): V < 10, so
        // it
        // takes nothing, and 120 = V (10 + 3.333): V = 9 V
        HarnessSketch sketch = new HarnessSketch()
                .battery("BT1", 12, 0.1)
                .component(
                        "M1",
                        Started.load(new Draw.MagnetMotor(
                                5, 40, 12, 1e-4, 0, Torque.CONSTANT, 0.05, OptionalDouble.empty())))
                .component("P1", Started.peak(new Draw.Motor(10, 40, 12), 40, 0.5))
                .wire("W1", "BT1.+", "M1.+", 1e-9)
                .wire("W2", "M1.-", "BT1.-", 1e-9)
                .wire("W3", "BT1.+", "P1.+", 1e-9)
                .wire("W4", "P1.-", "BT1.-", 1e-9);
        StartUp run = Started.of(sketch, "M1", "P1").run("P1");
        SupplySag sag = run.sag(new ComponentId("M1")).orElseThrow();
        assertEquals(11.5, sag.beforeVolts(), EXACT);
        assertEquals(9, sag.volts().get(0), EXACT);
        // later it takes its 5 A again and the voltage is lower than it would be without it: at 0.2 s f = 0.6703,
        // (120 - 10 (1 - f) - 5) / (10 + f / 0.3) = 9.13 V when M1 is steady, near to it with tau 50 ms
        double steady = (115 - 10 * (1 - Math.exp(-0.4))) / (10 + Math.exp(-0.4) / 0.3);
        assertEquals(steady, Started.at(run, sag.volts(), 0.2), 0.12);
        assertTrue(sag.lowestVolts() < 9 - 1e-3, "lowest is later than the first instant: " + sag.lowestVolts());
        assertTrue(sag.lowestSeconds() > 0);
    }

    @Test
    void aStartThatALoadOfConstantPowerCannotLiveThroughHasNoOperatingPoint() {
        // 0.1 ohm and 12 V: with 0.15 ohm of starter the open voltage is 7.2 V behind 0.06 ohm; at most 7.2^2 / 0.24 =
        // 216 W
        HarnessSketch sketch = new HarnessSketch()
                .battery("BT1", 12, 0.1)
                .component("P1", Started.peak(new Draw.Motor(10, 80, 12), 80, 0.2))
                .component("L1", Started.load(new Draw.ConstantPower(230, 12)))
                .wire("W1", "BT1.+", "P1.+", 1e-9)
                .wire("W2", "P1.-", "BT1.-", 1e-9)
                .wire("W3", "BT1.+", "L1.+", 1e-9)
                .wire("W4", "L1.-", "BT1.-", 1e-9);
        StartUp run = Started.of(sketch, "P1", "L1").run("P1");
        assertEquals(StartUp.Outcome.NO_OPERATING_POINT, run.outcome());
        assertTrue(run.sentence().contains("L1"), run.sentence());
    }

    @Test
    void crankingIsARunOfTheStarterMotorWithTheRestSteady() {
        // 12.5 V behind 10 mohm, starter 200 A running, 500 A at standstill (24 mohm at 12 V): 12.5 / 34 mohm = 367.6 A
        HarnessSketch sketch = new HarnessSketch()
                .battery("BT1", 12.5, 0.01)
                .component("M1", Started.peak(new Draw.Motor(200, 500, 12), 500, 0.1))
                .component("U1", Started.from(new Draw.Resistive(0.001, 12), 8))
                .wire("W1", "BT1.+", "M1.+", 1e-9)
                .wire("W2", "M1.-", "BT1.-", 1e-9)
                .wire("W3", "BT1.+", "U1.+", 1e-9)
                .wire("W4", "U1.-", "BT1.-", 1e-9);
        OperatingState cranking = OperatingState.of("crank", "Cranking", EngineMode.CRANKING)
                .with(new ComponentId("M1"), Setting.start())
                .with(new ComponentId("U1"), Setting.ON);
        StartUp run = Started.of(sketch, cranking).run("M1");
        assertTrue(run.cranking());
        assertEquals(12.5 / 0.034, run.starters().get(0).peakAmps(), 0.02);
        assertEquals(
                12.5 * 24 / 34, run.sag(new ComponentId("U1")).orElseThrow().lowestVolts(), 1e-3);
        // once it turns: 12.5 - 200 x 0.01 = 10.5 V
        assertEquals(200, run.starters().get(0).endAmps(), 2);
    }

    @Test
    void anAlternatorHoldsItsSensePointBeforeTheStartAndKeepsItsElectromotiveForceThroughIt() {
        // 14 V held at the battery, 20 mohm of alternator and cable between. Before: 12 ohm take 14 / 12 = 1.167 A, the
        // battery at 14 V takes nothing beyond its 13.9 V and 0.1 ohm: 1 A. E = 14 + 2.167 x 0.02 = 14.0433 V.
        // First instant, 0.3 ohm: V (1/12 + 1/0.3 + 1/0.02 + 1/0.1) = 14.0433 / 0.02 + 13.9 / 0.1
        HarnessSketch sketch = new HarnessSketch()
                .battery("BT1", 13.9, 0.1)
                .component(
                        "G1",
                        new Alternator(
                                14,
                                0.01,
                                200,
                                Optional.of(new AlternatorModel(
                                        Optional.of(new WireEnd.AtTerminal(new ComponentId("BT1"), "+")),
                                        OptionalDouble.empty(),
                                        OptionalDouble.empty(),
                                        List.of(),
                                        new TreeMap<>(),
                                        OptionalDouble.empty(),
                                        OptionalDouble.empty()))))
                .component("P1", Started.peak(new Draw.Motor(30, 40, 12), 40, 0.5))
                .component("L1", Started.from(new Draw.Resistive(1, 12), 8))
                .wire("W0", "G1.+", "BT1.+", 0.01)
                .wire("W00", "G1.-", "BT1.-", 1e-9)
                .wire("W1", "BT1.+", "P1.+", 1e-9)
                .wire("W2", "P1.-", "BT1.-", 1e-9)
                .wire("W3", "BT1.+", "L1.+", 1e-9)
                .wire("W4", "L1.-", "BT1.-", 1e-9);
        OperatingState running = OperatingState.of("run", "Running", EngineMode.RUNNING)
                .withSource(new ComponentId("G1"), true)
                .with(new ComponentId("P1"), Setting.ON)
                .with(new ComponentId("L1"), Setting.ON);
        SupplySag sag =
                Started.of(sketch, running).run("P1").sag(new ComponentId("L1")).orElseThrow();
        assertEquals(14, sag.beforeVolts(), 2e-3);
        double emf = 14 + (14 / 12.0 + 1) * 0.02;
        assertEquals((emf / 0.02 + 139) / (1 / 12.0 + 1 / 0.3 + 60), sag.volts().get(0), 2e-3);
    }

    @Test
    void theSameStudyGivesTheSameNumbersAndStopsWhenAsked() {
        Harness harness = pumpAnd(9)
                .harness()
                .with(OperatingState.of("on", "On", EngineMode.OFF)
                        .with(new ComponentId("P1"), Setting.ON)
                        .with(new ComponentId("L1"), Setting.ON));
        WireTables tables = WireTables.bundled();
        StartUps once = StartUpStudy.of(harness, Started.solutions(harness), tables, () -> false);
        assertEquals(once, StartUpStudy.of(harness, Started.solutions(harness), tables, () -> false));
        assertFalse(once.runs().isEmpty());
        assertThrows(
                CancellationException.class,
                () -> StartUpStudy.of(harness, Started.solutions(harness), tables, () -> true));
    }
}
