package org.ohmloom.bundle.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How much of a bundle is wire, by closed forms of circle packing. */
class CrossSectionTest {

    private static final double SEARCHED = 1e-6;

    @Test
    void twoEqualWiresFillHalfOfTheCircleRoundThem() {
        // 2 x 1 / 2^2
        assertEquals(0.5, CirclePacking.of(List.of(1.6, 1.6)).fillFraction(), SEARCHED);
    }

    @Test
    void sevenEqualWiresFillSevenNinths() {
        // one in the middle and six round it: 7 x 1 / 3^2
        assertEquals(7.0 / 9, CirclePacking.of(Collections.nCopies(7, 2.0)).fillFraction(), SEARCHED);
    }

    @Test
    void oneWireFillsItsCircleAndNoneFillsNothing() {
        assertEquals(1, CirclePacking.of(List.of(2.4)).fillFraction(), SEARCHED);
        assertEquals(0, new CrossSection(0, List.of()).fillFraction());
    }
}
