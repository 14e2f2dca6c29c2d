package org.ohmloom.bundle.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.ohmloom.BesideOthers;

/** Checked against the best circles known for equal circles and against what a plain look at the result must show. */
@BesideOthers
class CirclePackingTest {

    /** A fair heuristic stays within 3 % of the best circle known; nothing can be smaller than the best by more than rounding. */
    private static final double NEAR_BEST = 0.03;

    @ParameterizedTest
    @CsvFileSource(resources = "/org/ohmloom/bundle/equal-circles.csv", numLinesToSkip = 3)
    void equalWiresLieNearlyAsCloseAsTheBestKnown(int count, double ratio) {
        CrossSection section = CirclePacking.of(Collections.nCopies(count, 1.7));
        double found = section.diameterMm() / 1.7;
        assertTrue(found >= ratio * (1 - 1e-9) || count > 14, count + " wires: " + found + " beats " + ratio);
        assertTrue(found <= ratio * (1 + NEAR_BEST), count + " wires: " + found + " against " + ratio);
    }

    @Test
    void twoWiresLieSideBySide() {
        assertEquals(5.5, CirclePacking.of(List.of(4.0, 1.5)).diameterMm(), 1e-6);
    }

    @Test
    void oneWireIsItsOwnBundleAndNoneIsNone() {
        assertEquals(2.4, CirclePacking.of(List.of(2.4)).diameterMm(), 1e-12);
        assertEquals(0, CirclePacking.of(List.of()).diameterMm());
    }

    @Test
    void mixedWiresNeverOverlapNorStickOutNorBeatTheTwoLargest() {
        Random random = new Random(5);
        for (int round = 0; round < 40; round++) {
            List<Double> diameters = new ArrayList<>();
            int count = 2 + random.nextInt(30);
            for (int k = 0; k < count; k++) {
                diameters.add(1 + 8 * random.nextDouble() * random.nextDouble());
            }
            CrossSection section = CirclePacking.of(diameters);
            List<Double> sorted =
                    diameters.stream().sorted(Collections.reverseOrder()).toList();
            assertTrue(section.diameterMm() >= (sorted.get(0) + sorted.get(1)) * (1 - 1e-9));
            double area = diameters.stream().mapToDouble(d -> d * d).sum();
            assertTrue(section.diameterMm() <= Math.max(1.3 * Math.sqrt(area), 1.35 * (sorted.get(0) + sorted.get(1))));
            for (int k = 0; k < count; k++) {
                CrossSection.Disc one = section.discs().get(k);
                assertEquals(diameters.get(k), one.diameterMm(), 1e-12);
                assertTrue(Math.hypot(one.xMm(), one.yMm()) + one.diameterMm() / 2
                        <= section.diameterMm() / 2 * (1 + 1e-9));
                for (int j = 0; j < k; j++) {
                    CrossSection.Disc other = section.discs().get(j);
                    assertTrue(Math.hypot(one.xMm() - other.xMm(), one.yMm() - other.yMm())
                            >= (one.diameterMm() + other.diameterMm()) / 2 * (1 - 1e-9));
                }
            }
        }
    }

    @Test
    void theOrderOfTheWiresDoesNotChangeTheCircle() {
        List<Double> wires = new ArrayList<>(List.of(1.3, 2.1, 2.1, 3.4, 1.3, 5.0, 1.9));
        double one = CirclePacking.of(wires).diameterMm();
        Collections.reverse(wires);
        assertEquals(one, CirclePacking.of(wires).diameterMm(), 0);
    }
}
