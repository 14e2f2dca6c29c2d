package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/** Feeds whose answer is published or follows in a line of algebra, solved as networks; the source stands at each. */
@BesideOthers
class HandbookFeedsTest {

    private static final double NINE_DIGITS = 1e-9;

    /** Printed with three or four digits. */
    private static final double PRINTED = 5e-4;

    private static final double METRES_PER_FOOT = 0.3048;

    @ParameterizedTest
    @CsvFileSource(resources = "/org/ohmloom/solve/constant-power-feeds.csv", numLinesToSkip = 3)
    void aConstantPowerLoadTakesTheUpperOfItsTwoVoltages(double share, double ratio) {
        double ohms = 0.25;
        double watts = share * 12 * 12 / ohms;
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0)
                .wire("W", "a", "b", ohms)
                .power("L", "b", "0", watts)
                .solve();
        assertEquals(ratio * 12, solved.volts("b"), 12 * NINE_DIGITS);
    }

    /** At share 1/4 the load takes half the voltage and half the power is lost on the way: maximum power transfer. */
    @Test
    void nearTheLimitHalfThePowerIsLostOnTheFeed() {
        double share = 0.25 - 1e-9;
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0)
                .wire("W", "a", "b", 0.25)
                .power("L", "b", "0", share * 12 * 12 / 0.25)
                .solve();
        assertEquals(0.5, solved.flow("W").watts() / -solved.flow("B").watts(), 1e-4);
    }

    /** Two constant-power loads on one feed: 20 mohm to 60 W, 50 mohm on to 40 W, from 12 V; solved by sweeps to 1e-13. */
    @Test
    void aLadderOfConstantPowerLoads() {
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0)
                .wire("W1", "a", "b", 0.020)
                .wire("W2", "b", "c", 0.050)
                .power("L1", "b", "0", 60)
                .power("L2", "c", "0", 40)
                .solve();
        assertEquals(11.829942384, solved.volts("b"), NINE_DIGITS);
        assertEquals(11.658392142, solved.volts("c"), NINE_DIGITS);
    }

    /**
     * A load of constant power, constant current and resistance together: (1 + R/Rc) V^2 - (Vs - R I0) V + R P = 0, with
     * Vs = 24, R = 0.2, Rc = 8, I0 = 5, P = 100: V = (23 + sqrt(23^2 - 4 x 1.025 x 20)) / (2 x 1.025).
     */
    @Test
    void aLoadOfThreeKindsTogetherSolvesItsQuadratic() {
        double volts = (23 + Math.sqrt(23 * 23 - 4 * 1.025 * 20)) / (2 * 1.025);
        new Net()
                .battery("B", "0", "a", 24, 0)
                .wire("W", "a", "b", 0.2)
                .power("P", "b", "0", 100)
                .current("I", "b", "0", 5)
                .heater("R", "b", "0", 8)
                .solve()
                .hasVolts("b", volts);
    }

    /** A wiring handbook's inverter: 2,400 W at 12 V through two cables of 1.6 mohm, 200 A: 0.32 V on each, 0.64 V in all. */
    @Test
    void anInverterLosesSixtyFourHundredthsOfAVoltOnItsTwoCables() {
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0)
                .wire("W1", "a", "b", 0.0016)
                .current("L", "b", "c", 200)
                .wire("W2", "c", "0", 0.0016)
                .solve();
        assertEquals(0.32, solved.flow("W1").dropVolts(), NINE_DIGITS);
        assertEquals(0.64, 12 - (solved.volts("b") - solved.volts("c")), NINE_DIGITS);
    }

    /** A how-to page on 12 V wiring: 1.3 mm2, 0.01785 ohm mm2/m, 20 m one way, 1 A: 0.549 V, 4.58 %. */
    @Test
    void aTwelveVoltRunOfTwentyMetres() {
        double oneWayOhms = 0.01785 * 20 / 1.3;
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0)
                .wire("W1", "a", "b", oneWayOhms)
                .current("L", "b", "c", 1)
                .wire("W2", "c", "0", oneWayOhms)
                .solve();
        double drop = 12 - (solved.volts("b") - solved.volts("c"));
        assertEquals(0.549, drop, PRINTED);
        assertEquals(0.0458, drop / 12, PRINTED / 12);
    }

    /**
     * A forum's long loop with the NEETS figure 1.619 ohm per 1,000 ft for No. 12 at 25 C: 5,000 ft out and back, 16.19
     * ohm; 16 V at 1 A and 161 V at 10 A as printed, 161.9 V by its own arithmetic.
     */
    @Test
    void aLongLoopOfTwelveGauge() {
        double ohms = 2 * 5 * 1.619;
        Solved solved = new Net()
                .battery("B", "0", "a", 300, 0)
                .wire("W", "a", "b", ohms)
                .current("L", "b", "0", 10)
                .solve();
        assertEquals(161.9, solved.flow("W").dropVolts(), NINE_DIGITS);
    }

    /**
     * FAA AC 43.13-1B CHG 1, Example No. 1: 50 ft, 20 A, 1 V falls between No. 10 (1.26 ohm per 1,000 ft) and No. 8 (0.70):
     * No. 10 loses more than a volt, No. 8 less.
     */
    @Test
    void advisoryCircularExampleOneFallsBetweenEightAndTenGauge() {
        for (int gauge : new int[] {10, 8}) {
            ConductorRow row = WireTables.bundled()
                    .family("ac-43.13-1b")
                    .row(Gauge.awg(gauge))
                    .orElseThrow();
            Solved solved = new Net()
                    .battery("B", "0", "a", 28, 0)
                    .wire("W", "a", "b", row.ohmsPerMetreAt20Celsius() * 50 * METRES_PER_FOOT)
                    .current("L", "b", "0", 20)
                    .solve();
            assertEquals(gauge == 10 ? 1.26 : 0.70, solved.flow("W").dropVolts(), 0.01);
        }
    }

    /**
     * The loop rule with ISO 6722 resistance: 8 m out and back of 0.5 mm2 (37.1 mohm/m), battery 10 mohm, 10 A fuse 7.7 mohm:
     * 12 / (0.2968 + 0.010 + 0.0077) = 38.16 A, printed as 38.2 A.
     */
    @Test
    void theProspectiveCurrentOfAThinLoopBehindATenAmpereFuse() {
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0.010)
                .wire("F", "a", "b", 0.0077)
                .wire("W", "b", "0", 8 * 0.0371)
                .solve();
        assertEquals(38.16, solved.flow("W").amps(), 5e-3);
    }

    /** An estimate on a feed: 80 A and no more than 60 W lost: 60 / 80^2 = 0.009375 ohm. */
    @Test
    void eightyAmperesLoseSixtyWattsOnNinePointThreeSevenFiveMilliohms() {
        Solved solved = new Net()
                .battery("B", "0", "a", 12, 0)
                .wire("W", "a", "b", 0.009375)
                .current("L", "b", "0", 80)
                .solve();
        assertEquals(60, solved.flow("W").watts(), NINE_DIGITS * 60);
    }
}
