package org.ohmloom.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.ohmloom.words.Text;

/** Digits at the edges of what is written plainly. */
class NumberTextTest {

    @Test
    void fromAMillionthToBelowTenMilliardsNoExponentIsWritten() {
        assertEquals("0.000001", NumberText.significant(1e-6, 3));
        assertEquals("9.99e-7", NumberText.significant(9.99e-7, 3));
        assertEquals("9990000000", NumberText.significant(9.99e9, 3));
        assertEquals("1e10", NumberText.significant(1e10, 3));
    }

    @Test
    void zeroNeverHasASign() {
        assertEquals(0.0, NumberText.read("-0", Text.NONE).value());
        assertEquals(Gauge.awg(0), new Gauge(GaugeSystem.AWG, -0.0));
    }

    @Test
    void aMillionthOfTheSmallestValueShownIsNoise() {
        assertEquals("0 mm", Formats.millimetres(1e-9), "0.001 x 1e-6");
        assertEquals("<0.001 mm", Formats.millimetres(1.1e-9));
        assertEquals(">-0.001 mm", Formats.millimetres(-1.1e-9));
    }
}
