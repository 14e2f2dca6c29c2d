package org.ohmloom.ground.coupling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

/** Worked examples of textbooks, each with its source, and limits every formula must have. */
@BesideOthers
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

    /**
     * Amplitude of what a sine puts on a signal, V, from the formula for one edge alone: the sine as short straight edges, each of
     * which adds what it puts there and then dies away with R (C12 + C2G). By then the beginning is forgotten.
     */
    private static double sineVolts(
            double amplitudeVolts, double hertz, double mutualFarads, double groundFarads, double ohms) {
        int edges = 10_000;
        double seconds = 1 / hertz / edges;
        double left = Math.exp(-seconds / (ohms * (mutualFarads + groundFarads)));
        double volts = 0;
        double largest = 0;
        for (int edge = 0; edge < 20 * edges; edge++) {
            double height = amplitudeVolts
                    * (Math.sin(2 * Math.PI * (edge + 1) / edges) - Math.sin(2 * Math.PI * edge / edges));
            volts = volts * left + CouplingFormulas.capacitiveVolts(height, seconds, mutualFarads, groundFarads, ohms);
            largest = edge >= 19 * edges ? Math.max(largest, Math.abs(volts)) : 0;
        }
        return largest;
    }

    /**
     * Any resistance, Vn = V1 j w (C12 / (C12 + C2G)) / (j w + 1 / (R (C12 + C2G))): Ott, 2nd edition, equation 2-2 (from memory),
     * with the 50 pF, 150 pF and 10 V at 100 kHz of its problem 2.1. Between a small R (w R C12 V) and a large one (2.5 V).
     */
    @Test
    void aResistanceBetweenSmallAndLargeGivesOttsFullEquation() {
        double omega = 2 * Math.PI * 100e3;
        // w R C = 1 at 7958 ohm: 2.5 / root 2 = 1.768 V
        assertEquals(1.768, sineVolts(10, 100e3, 50e-12, 150e-12, 1 / (omega * 200e-12)), 0.001);
        // 10 kilohm: w R C = 1.2566, 2.5 x 1.2566 / root(1 + 1.2566^2) = 1.956 V
        assertEquals(1.956, sineVolts(10, 100e3, 50e-12, 150e-12, 10_000), 0.001);
        // 3 kilohm: w R C = 0.37699, 2.5 x 0.37699 / 1.06870 = 0.8819 V
        assertEquals(0.8819, sineVolts(10, 100e3, 50e-12, 150e-12, 3000), 0.0005);
        // small R: 20 ohm, w R C12 V = 6.283 mV
        assertEquals(6.283e-3, sineVolts(10, 100e3, 50e-12, 150e-12, 20), 0.005e-3);
    }

    /**
     * By mutual inductance, V = 2 pi f M I (Ott, 2nd edition, equation 2-9, from memory): the two wires over a chassis for 2 m, 0.763 uH,
     * and 10 A at 1 kHz induce 47.9 mV; at 100 Hz a tenth of it.
     */
    @Test
    void tenAmperesOfAKilohertzInduceFortyEightMillivolts() {
        double mutualHenries = 2 * CouplingFormulas.mutualHenriesPerMetre(0.010, 0.010, 0.003);
        double volts = CouplingFormulas.inductiveVolts(mutualHenries, 10, edgeSecondsOfSine(1000));
        assertEquals(0.0479, volts, 0.0001);
        assertEquals(2 * Math.PI * 1000 * mutualHenries * 10, volts, 1e-15);
        assertEquals(0.00479, CouplingFormulas.inductiveVolts(mutualHenries, 10, edgeSecondsOfSine(100)), 0.00001);
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
