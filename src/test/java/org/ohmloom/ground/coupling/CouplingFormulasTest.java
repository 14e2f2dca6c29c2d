package org.ohmloom.ground.coupling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Worked examples of textbooks, each with its source, and limits every formula must have. */
class CouplingFormulasTest {

    /** A sine of amplitude V and frequency f has its steepest slope 2 pi f V; an edge of that slope stands for it. */
    private static double edgeSecondsOfSine(double hertz) {
        return 1 / (2 * Math.PI * hertz);
    }

    /** Stray 0.1 pF from 100 V mains to a node of 1 kilohm: the page prints 3 uV; w R C V is 3.14 uV at 50 Hz, 3.77 uV at 60 Hz. */
    @Test
    void mainsThroughATenthOfAPicofaradMakesThreeMicrovolts() {
        double at50 = CouplingFormulas.capacitiveVolts(100, edgeSecondsOfSine(50), 0.1e-12, 0, 1000);
        double at60 = CouplingFormulas.capacitiveVolts(100, edgeSecondsOfSine(60), 0.1e-12, 0, 1000);
        assertEquals(3.14e-6, at50, 0.005e-6);
        assertEquals(3.77e-6, at60, 0.005e-6);
    }

    /** Teaching notes on instrumentation: 1 pF and an edge of 1 V in 1 us drive 1 uA, so 1 V across a megohm if nothing else holds it. */
    @Test
    void onePicofaradAndAVoltInAMicrosecondDriveAMicroampere() {
        double ohms = 1000;
        double volts = CouplingFormulas.capacitiveVolts(1, 1e-6, 1e-12, 0, ohms);
        assertEquals(1e-6, volts / ohms, 1e-11);
    }

    /** Ott, Noise Reduction Techniques in Electronic Systems, 2nd edition, problem 2.1 (from memory): 50 pF / 200 pF x 10 V = 2.5 V. */
    @Test
    void anUnloadedWireTakesTheShareOfTheDivider() {
        assertEquals(2.5, CouplingFormulas.capacitiveVolts(10, 1e-9, 50e-12, 150e-12, Double.POSITIVE_INFINITY), 1e-12);
        assertEquals(2.5, CouplingFormulas.capacitiveVolts(10, 1e-12, 50e-12, 150e-12, 1e6), 1e-6);
    }

    /** Wires 3 mm apart, both 10 mm above the chassis: 0.1 ln(1 + 400 / 9) = 0.382 uH/m (Paul's formula, computed). */
    @Test
    void twoWiresOverAChassisShareFourTenthsOfAMicrohenryForAMetre() {
        assertEquals(0.3816e-6, CouplingFormulas.mutualHenriesPerMetre(0.010, 0.010, 0.003), 0.0001e-6);
    }

    /** The same over 2 m beside an edge of 5 A in 10 us: 0.763 uH x 5e5 A/s = 0.38 V. */
    @Test
    void fiveAmperesInTenMicrosecondsInduceFourTenthsOfAVolt() {
        double mutualHenries = 2 * CouplingFormulas.mutualHenriesPerMetre(0.010, 0.010, 0.003);
        assertEquals(0.3816, CouplingFormulas.inductiveVolts(mutualHenries, 5, 10e-6), 0.0001);
    }

    /** Two equal wires in air: pi e / acosh(D / d); far apart 27.8 / ln(2 D / d) pF/m (MIL-HDBK-419A equation 6-11, from memory). */
    @Test
    void equalWiresGiveTheFormulaOfAPair() {
        double pair = CouplingFormulas.pairFaradsPerMetre(0.003, 0.0005, 0.0005, 1);
        double acosh = Math.log(3 + Math.sqrt(8));
        assertEquals(Math.PI * CouplingFormulas.PERMITTIVITY / acosh, pair, 1e-20);
        double far = CouplingFormulas.pairFaradsPerMetre(0.1, 0.0005, 0.0005, 1);
        assertEquals(27.8e-12 / Math.log(200), far, 0.01e-12);
    }

    @Test
    void aWireMirroredInItsPlaneIsHalfAPair() {
        double height = 0.01;
        double overPlane = CouplingFormulas.planeFaradsPerMetre(height, 0.0004, 1);
        double withImage = CouplingFormulas.pairFaradsPerMetre(2 * height, 0.0004, 0.0004, 1);
        assertEquals(overPlane / 2, withImage, 1e-16);
        double wide = CouplingFormulas.planeHenriesPerMetre(height, 0.0008);
        assertEquals(0.2e-6 * Math.log(50), wide, 1e-12);
    }

    @Test
    void aFilterTakesAShortPulseDownAndLeavesALongOne() {
        assertEquals(2 * Math.PI * 100 * 1e-6, CouplingFormulas.filteredShare(100, 1e-6), 1e-6);
        assertEquals(1, CouplingFormulas.filteredShare(100, 1), 1e-12);
    }

    @Test
    void aShieldHelpsAboveItsCutOffOnly() {
        double henries = 1e-6;
        double ohms = 0.02;
        double cutOffHertz = ohms / henries / (2 * Math.PI);
        assertEquals(Math.sqrt(0.5), CouplingFormulas.shieldShare(cutOffHertz, ohms, henries), 1e-12);
        assertTrue(CouplingFormulas.shieldShare(cutOffHertz / 100, ohms, henries) > 0.99);
        assertEquals(0.01, CouplingFormulas.shieldShare(100 * cutOffHertz, ohms, henries), 1e-4);
    }

    @Test
    void conductorsThatTouchHaveNoCapacitance() {
        assertThrows(
                IllegalArgumentException.class, () -> CouplingFormulas.pairFaradsPerMetre(0.001, 0.0005, 0.0005, 1));
    }
}
