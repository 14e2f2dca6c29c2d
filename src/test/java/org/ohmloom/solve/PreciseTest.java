package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

/** Numbers of about 32 digits, held against decimal numbers of 60. */
@BesideOthers
class PreciseTest {

    private static final MathContext DIGITS = new MathContext(60);

    /** Relative error allowed to one operation. */
    private static final double ERROR = 1e-30;

    @Test
    void aDifferenceOfTwoNearVoltagesKeepsItsDigits() {
        // 12 V plus a trillionth of a trillionth; 12 V off again leaves it
        Precise near = Precise.of(12).plus(1e-24);
        assertEquals(12, near.value(), 0);
        assertEquals(1e-24, near.minus(Precise.of(12)).value(), 1e-24 * 1e-7);
    }

    @Test
    void aThirdTimesThreeIsOneToThirtyDigits() {
        Precise third = Precise.of(1).dividedBy(3);
        assertEquals(0, third.times(3).minus(Precise.of(1)).value(), ERROR);
        assertTrue(third.minus(Precise.of(1.0 / 3)).value() != 0, "more digits than a double");
    }

    @Test
    void sumsAndProductsOfDoublesAreExact() {
        // 0.1 + 0.2 and 0.1 x 0.2 as the doubles they are
        assertEquals(new BigDecimal(0.1).add(new BigDecimal(0.2)), exact(Precise.sum(0.1, 0.2)));
        assertEquals(new BigDecimal(0.1).multiply(new BigDecimal(0.2)), exact(Precise.product(0.1, 0.2)));
    }

    @Test
    void randomOperationsAgreeWithDecimalNumbers() {
        Random random = new Random(32);
        for (int round = 0; round < 10_000; round++) {
            Precise a = Precise.sum(number(random), 1e-17 * number(random));
            Precise b = Precise.sum(number(random), 1e-17 * number(random));
            double c = number(random);
            BigDecimal x = exact(a);
            BigDecimal y = exact(b);
            near(x.add(y), a.plus(b), x.abs().add(y.abs()));
            near(x.subtract(y), a.minus(b), x.abs().add(y.abs()));
            near(
                    x.multiply(new BigDecimal(c)),
                    a.times(c),
                    x.multiply(new BigDecimal(c)).abs());
            BigDecimal quotient = x.divide(new BigDecimal(c), DIGITS);
            near(quotient, a.dividedBy(c), quotient.abs());
            assertEquals(x.negate(), exact(a.negated()));
        }
    }

    private static double number(Random random) {
        return (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(24) - 12);
    }

    private static void near(BigDecimal expected, Precise actual, BigDecimal size) {
        double miss = exact(actual).subtract(expected).abs().doubleValue();
        assertTrue(miss <= ERROR * size.doubleValue(), () -> "missed by " + miss + " of " + size);
    }

    /** Both parts of a precise number; the low one is what is left after the high one. */
    private static BigDecimal exact(Precise number) {
        BigDecimal high = new BigDecimal(number.value());
        return high.add(new BigDecimal(number.minus(Precise.of(number.value())).value()));
    }
}
