package org.ohmloom.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Circular mils by the exercises of US Navy NEETS Module 4 (NAVEDTRA 14176). */
class CircularMilsTest {

    private static final double EXACT = 1e-6;
    /** A square mil is the square of 0.001 in. */
    private static final double MM2_IN_A_SQUARE_MIL = 0.0254 * 0.0254;

    private static double circularMils(double areaMm2) {
        return Unit.CIRCULAR_MIL.fromCanonical(areaMm2);
    }

    private static double roundMm2(String diameter) {
        double mm = 1e3 * QuantityParser.parse(diameter, Dimension.LENGTH).canonical();
        return Math.PI / 4 * mm * mm;
    }

    /** Assignment 1, question 8: twelve strands with a radius of 2/10 in: 400 mil squared x 12 = 1,920,000 circular mils. */
    @Test
    void neetsQuestionEightTwelveThickStrands() {
        assertEquals(1_920_000, circularMils(12 * roundMm2("0.4 in")), EXACT * 1_920_000);
    }

    /** Question 9, the same conductor: 1,507,965 square mils as printed, 1,507,964.5 computed. */
    @Test
    void neetsQuestionNineTheSameInSquareMils() {
        double squareMils = Unit.SQUARE_MILLIMETRE.fromCanonical(12 * roundMm2("400 mil")) / MM2_IN_A_SQUARE_MIL;
        assertEquals(1_507_965, squareMils, 1);
    }

    /** Answer A6: 19 strands of 0.004 in have 4 squared x 19 = 304 circular mils. */
    @Test
    void neetsAnswerSixNineteenThinStrands() {
        assertEquals(304, circularMils(19 * roundMm2("0.004 in")), EXACT);
        assertEquals(
                19 * roundMm2("4 mil"),
                QuantityParser.parse("304 cmil", Dimension.AREA).canonical(),
                EXACT);
    }

    /** ASTM B258: 4/0 has 460 mil and so 211,600 circular mils. */
    @Test
    void theLargestGaugeHasTwoHundredAndElevenThousandSixHundred() {
        assertEquals(211_600, Gauge.parse("4/0 AWG").circularMils(), EXACT * 211_600);
    }
}
