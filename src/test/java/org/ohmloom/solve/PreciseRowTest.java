package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

/** A row adds and multiplies to the very digits of single precise numbers. */
@BesideOthers
class PreciseRowTest {

    private static final int COUNT = 1000;

    private final Random random = new Random(7);
    private final PreciseRow row = new PreciseRow(3);

    private Precise number() {
        double high = random.nextGaussian() * Math.pow(10, random.nextInt(12) - 6);
        return Precise.sum(high, high * 1e-17 * random.nextGaussian());
    }

    private void holds(Precise expected) {
        assertEquals(expected.value(), row.get(2).value(), 0);
        assertEquals(expected.low(), row.get(2).low(), 0);
    }

    @Test
    void differencesAndSumsAndProductsAreThoseOfSingleNumbers() {
        for (int each = 0; each < COUNT; each++) {
            Precise one = number();
            Precise other = number();
            row.set(0, one);
            row.set(1, other);
            row.setDifference(2, row, 0, 1);
            holds(one.minus(other));
            row.setProduct(2, row, 0, other);
            holds(one.times(other));
            row.set(2, one);
            row.add(2, row, 1);
            holds(one.plus(other));
            row.subtract(2, row, 1);
            holds(one.plus(other).minus(other));
            row.set(2, one);
            row.addProduct(2, row, 1, 0.3);
            holds(one.plus(other.times(0.3)));
        }
    }

    @Test
    void aMicrovoltBetweenTwelveVoltsKeepsAllDigitsOfADouble() {
        row.set(0, Precise.of(12).plus(1e-6));
        row.set(1, 12);
        assertEquals(1e-6, row.difference(0, 1), 1e-6 * 1e-15);
    }

    @Test
    void theDatumIsZeroAndTakesNothing() {
        row.set(0, 5);
        row.add(-1, row, 0);
        assertEquals(5, row.difference(0, -1), 0);
        assertEquals(0, row.value(-1), 0);
    }

    @Test
    void aStepMovesEveryNumberByItsPart() {
        row.set(0, 1);
        PreciseRow moved = row.plus(0.5, new double[] {1e-20, 2, 0});
        assertEquals(5e-21, moved.get(0).minus(Precise.of(1)).value(), 1e-30);
        assertEquals(1, moved.value(1), 0);
    }
}
