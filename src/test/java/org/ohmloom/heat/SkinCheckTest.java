package org.ohmloom.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.heat.balance.SkinEffect;

/** Whether switching crowds the current of a wire to its outside. */
class SkinCheckTest {
    private static final double EXACT = 1e-12;

    /** 2.5 mm2, 2.0 mm over the strands. */
    private static final RoundWire WIRE = new RoundWire(0.0076, 2.27, 2.0, 3.0, RoundWire.USUAL_INSULATION);

    /** IEC 60228 class 5, thickest strand of each size, from memory. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 0.21",
        "1, 0.21",
        "1.5, 0.26",
        "2.5, 0.26",
        "4, 0.31",
        "6, 0.31",
        "10, 0.41",
        "50, 0.41",
        "70, 0.51",
    })
    void strandsAreAsThickAsTheClassAllows(double areaMm2, double strandMm) {
        assertEquals(strandMm, SkinCheck.strandMm(areaMm2));
    }

    @Test
    void atHalfDutyHalfOfTheSquareAlternates() {
        double extra = SkinEffect.extraHeatFraction(20_000, 0.5, WIRE.ohmsPerMetreAt(60));
        assertTrue(extra > 0.001, () -> "something to compare: " + extra);
        SkinCheck half = SkinCheck.of(20_000, WIRE, 60, 0.5);
        assertEquals(extra, half.extraHeatFraction(), EXACT);
        assertEquals(2 * extra, SkinCheck.of(20_000, WIRE, 60, 1).extraHeatFraction(), EXACT);
        assertEquals(0, SkinCheck.of(20_000, WIRE, 60, 0).extraHeatFraction());
        assertEquals(1.0, half.conductorRadiusMm());
        assertEquals(0.13, half.strandRadiusMm());
    }

    @Test
    void aHundredthMoreHeatMattersAndLessDoesNot() {
        assertTrue(new SkinCheck(100, 6.6, 0.13, 1, 0.01).matters());
        assertFalse(new SkinCheck(100, 6.6, 0.13, 1, 0.0099).matters());
        assertEquals(
                "skin depth 6.6 mm at 100 Hz against 0.13 mm of a strand and 1 mm of the conductor: does not matter, 0.5 %"
                        + " more heat with the conductor taken as solid",
                new SkinCheck(100, 6.6, 0.13, 1, 0.005).words());
        assertTrue(new SkinCheck(100, 6.6, 0.13, 1, 0.02).words().contains(": matters, 2 % more"));
    }
}
