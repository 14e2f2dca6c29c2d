package org.ohmloom.solve.charge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.StateId;

/** Worked examples of batteries and load analysis from handbooks; BE-n are the rows of our collection. */
@BesideOthers
class BatteryExamplesTest {

    /** Examples are printed with so many digits. */
    private static final double PRINTED = 5e-4;

    @Test
    void be1TheCapacityFormOfPeukertsLaw() {
        // published Peukert tutorial: Cp = 250 Ah at 1 A, 20 A, n = 1.3: 250 / 20^1.3 = 5.0886 h, 101.77 Ah drawn
        double hours = Peukert.hoursByOneAmpCapacity(250, 1.3, 20);
        assertEquals(5.08863, hours, 5e-6);
        assertEquals(101.77, 20 * hours, 5e-3);
    }

    @Test
    void be3TheRatedFormOfPeukertsLaw() {
        // Peukert 1897: 100 Ah at 20 h, k = 1.2, 10 A: 20 (100 / (10 x 20))^1.2 = 8.706 h
        assertEquals(8.706, Peukert.hours(100, 20, 1.2, 10), PRINTED);
    }

    @Test
    void theRatedCurrentLastsTheRatedHours() {
        // 100 Ah over 20 h is 5 A: 20 h whatever the exponent
        assertEquals(20, Peukert.hours(100, 20, 1.3, 5), 1e-12);
    }

    @Test
    void be5MinutesByReserveCapacityAlone() {
        // SAE J537: 115 min at 25 A; at 10 A 115 x 25 / 10 = 287.5 min
        assertEquals(287.5, Peukert.reserveMinutes(115, 10), 1e-12);
    }

    @Test
    void theListedBatteriesReserveInAmpereHours() {
        // published battery table of a truck manual: 115 min is 47.9 Ah, 180 min is 75.0 Ah at 25 A
        assertEquals(47.9, Peukert.reserveAmpHours(115), 0.05);
        assertEquals(75.0, Peukert.reserveAmpHours(180), 0.05);
    }

    @Test
    void twoTestsGiveTheExponent() {
        // (log t2 - log t1) / (log I1 - log I2), the form of a battery monitor's manual: 5 A lasts 20 h, 25 A 2.9 h
        double exponent = Peukert.exponent(5, 20, 25, 2.9);
        assertEquals(1.19981, exponent, 5e-6);
        // and the exponent gives the second test back
        assertEquals(2.9, Peukert.hours(100, 20, exponent, 25), 1e-12);
    }

    @Test
    void be6FiftyAmperesOnASixtyAmpereAlternator() {
        // FAA AC 43.13-1B CHG 1, 11-35a: 80 % of 60 A = 48 A; 50 A is too much by 2 A
        assertEquals(48, LoadTabulation.allowedAmps(60), 1e-12);
        LoadTabulation cruise = new LoadTabulation(new StateId("cruise"), List.of(), 50, 50, 50, 50, 50, 0, 50, 60);
        assertEquals(2, cruise.continuousAmps() - cruise.allowedAmps(), 1e-12);
        assertTrue(cruise.shareFraction() > LoadTabulation.LARGEST_SHARE);
    }

    @Test
    void fortyEightAmperesAreJustAllowed() {
        LoadTabulation cruise = new LoadTabulation(new StateId("cruise"), List.of(), 48, 48, 48, 48, 48, 0, 48, 60);
        assertFalse(cruise.shareFraction() > LoadTabulation.LARGEST_SHARE);
    }

    @Test
    void theTwoColumnTabulationAddsTheLargestIntermittentLoad() {
        // ABYC E-11, from memory: A = 30 A; B = 20 + 8 + 4 = 32 A: 10 % is 3.2 A, the largest 20 A: 50 A
        assertEquals(50, LoadAnalysis.twoColumnAmps(30, 32, 20), 1e-12);
        // many small ones: B = 30 x 2 = 60 A, 10 % is 6 A, the largest 2 A: 36 A
        assertEquals(36, LoadAnalysis.twoColumnAmps(30, 60, 2), 1e-12);
    }

    @Test
    void anIntermittentLoadCountsByTheLengthOfTheWindow() {
        // 20 A for 10 s every 60 s: over 5 s all of it, over 5 min 5 x 10 / 300 x 20 = 3.333 A, over 30 min the same
        assertEquals(20, WorstMean.amps(20, 10, 60, WorstMean.FIVE_SECONDS), 1e-12);
        assertEquals(20 * 50 / 300.0, WorstMean.amps(20, 10, 60, WorstMean.FIVE_MINUTES), 1e-12);
        assertEquals(20 * 300 / 1800.0, WorstMean.amps(20, 10, 60, WorstMean.HALF_HOUR), 1e-12);
        // 90 A once for 8 s: 90 A, 90 x 8 / 300 = 2.4 A, 0.4 A
        assertEquals(2.4, WorstMean.amps(90, 8, Double.POSITIVE_INFINITY, WorstMean.FIVE_MINUTES), 1e-12);
        assertEquals(0.4, WorstMean.amps(90, 8, Double.POSITIVE_INFINITY, WorstMean.HALF_HOUR), 1e-12);
    }
}
