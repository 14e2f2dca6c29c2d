package org.ohmloom.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Position;

/** Loops in alternating fields, against textbook numbers. */
@BesideOthers
class LoopInductionTest {

    private static final double HALF_PER_CENT = 0.005;
    private static final double EXACT = 1e-12;

    /** 4 pi 1e-7 / 2 pi, H/m. */
    private static final double MU0_OVER_TWO_PI = 2e-7;

    /**
     * A coplanar loop 1 m long with sides 10 mm and 20 mm from a wire with 10 A at 100 Hz: flux (mu0 / 2 pi) I l ln(r2 / r1)
     * (MIL-HDBK-419A, 29 December 1987, volume I, equation 65), induced 0.87 mV (computed). The mean of that field over the loop's
     * 1 m x 10 mm, taken as uniform, induces the same.
     */
    @Test
    void aLoopBesideAWireWithTenAmperesOfHundredHertzGets087Millivolts() {
        double squareMetres = 1 * (0.020 - 0.010);
        double webers = MU0_OVER_TWO_PI * 10 * 1 * Math.log(0.020 / 0.010);
        double volts = LoopInduction.volts(100, webers / squareMetres, squareMetres);
        assertEquals(0.87e-3, volts, HALF_PER_CENT * 0.87e-3);
        assertEquals(2 * Math.PI * 100 * 2e-7 * 10 * Math.log(2), volts, EXACT);
    }

    /** H. W. Ott, Noise Reduction Techniques in Electronic Systems, 2nd edition, eq. 2-8: V = 2 pi f B A, from memory. */
    @Test
    void oneTeslaAtOneHertzThroughASquareMetreInducesTwoPiVolts() {
        assertEquals(2 * Math.PI, LoopInduction.volts(1, 1, 1), EXACT);
        // 50 Hz, 1 uT, 0.5 m2: 2 pi 50 x 1e-6 x 0.5 = 157 uV
        assertEquals(157.08e-6, LoopInduction.volts(50, 1e-6, 0.5), 1e-8);
    }

    /** C. R. Paul, Introduction to Electromagnetic Compatibility: 0.4 ln(2 D / d) uH/m of a pair, from memory. */
    @Test
    void aPairOfWiresHasFourTenthsOfTheLogarithmInMicrohenriesForEachMetre() {
        // 10 mm apart, 1 mm thick, 2 m: 0.4 x ln 20 x 2 = 2.397 uH
        assertEquals(0.4e-6 * Math.log(20) * 2, LoopInduction.pairHenries(0.010, 0.001, 2), EXACT);
        assertEquals(2.397e-6, LoopInduction.pairHenries(0.010, 0.001, 2), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> LoopInduction.pairHenries(0.0005, 0.001, 2));
    }

    /** The same source: 0.2 ln(4 h / d) uH/m above a plane, half that of a pair with the mirrored wire at D = 2 h. */
    @Test
    void aWireAboveChassisHasHalfTheInductanceOfThePairWithItsMirrorImage() {
        // 10 mm above, 1 mm thick, 1 m: 0.2 x ln 40 = 0.738 uH
        assertEquals(0.738e-6, LoopInduction.abovePlaneHenries(0.010, 0.001, 1), 1e-9);
        assertEquals(
                LoopInduction.pairHenries(0.020, 0.001, 1) / 2,
                LoopInduction.abovePlaneHenries(0.010, 0.001, 1),
                EXACT);
    }

    @Test
    void aVoltageDrivesItsCurrentOverResistanceAndReactanceAtRightAngles() {
        // 3 ohm and 2 pi f L = 4 ohm: 5 ohm together
        double henries = 4 / (2 * Math.PI * 1000);
        assertEquals(2, LoopInduction.amps(10, 3, henries, 1000), EXACT);
        assertEquals(10.0 / 3, LoopInduction.amps(10, 3, 0, 1000), EXACT);
    }

    /**
     * Common impedance, V = I (R + j 2 pi f L) of the shared conductor (MIL-HDBK-419A, 6.2.2.1; Ott, chapter 3; from memory): 2 m of
     * 2.5 mm2 at 7.6 mohm/m, 2 mm thick and 10 mm above the chassis, carry 20 A of another.
     */
    @Test
    void twentyAmperesOnTwoMetresOfSharedReturnDisturbMoreTheFasterTheyChange() {
        double ohms = 2 * 0.0076;
        // 0.2 ln(4 x 10 / 2) x 2 = 1.198 uH
        double henries = LoopInduction.abovePlaneHenries(0.010, 0.002, 2);
        assertEquals(1.198e-6, henries, 0.001e-6);
        // 1 Hz: 20 x 15.2 mohm, as with direct current; 1 kHz: 20 x |15.2 + j 7.53| mohm = 339 mV; 20 kHz: 150.6 mohm
        // of reactance, 3.03 V
        assertEquals(0.304, 20 * LoopInduction.impedanceOhms(ohms, henries, 1), 1e-6);
        assertEquals(0.339, 20 * LoopInduction.impedanceOhms(ohms, henries, 1000), HALF_PER_CENT * 0.339);
        assertEquals(3.03, 20 * LoopInduction.impedanceOhms(ohms, henries, 20_000), HALF_PER_CENT * 3.03);
        // where both are equal, R / (2 pi L), it is root 2 times the resistance
        double equalHertz = ohms / (2 * Math.PI * henries);
        assertEquals(Math.sqrt(2) * ohms, LoopInduction.impedanceOhms(ohms, henries, equalHertz), EXACT);
        // and that voltage drives those 20 A through it
        assertEquals(20, LoopInduction.amps(20 * Math.hypot(ohms, ohms), ohms, henries, equalHertz), 1e-9);
    }

    @Test
    void theShoelaceFormulaGivesARectangleItsSidesMultipliedWhicheverWayRound() {
        List<Position> corners = List.of(
                new Position(100, 100), new Position(2100, 100), new Position(2100, 600), new Position(100, 600));
        assertEquals(2.0 * 0.5, LoopOutline.shoelace(corners), EXACT);
        assertEquals(
                2.0 * 0.5,
                LoopOutline.shoelace(List.of(corners.get(3), corners.get(2), corners.get(1), corners.get(0))),
                EXACT);
        // there and back on one way encloses nothing
        assertEquals(0, LoopOutline.shoelace(List.of(corners.get(0), corners.get(1))), EXACT);
    }
}
