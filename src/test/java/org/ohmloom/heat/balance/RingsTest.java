package org.ohmloom.heat.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Rings round a wire in the middle: by hand for two wires, and each wire's own pass written out for bundles made at random. */
class RingsTest {

    private static final double CONDUCTIVITY = 0.14;

    /** Two equal wires of 4 mm2 room, 3 and 1 W/m: (3 - 1 x 4/4) ln 2 + 1 seen from the hot one, (1 - 3) ln 2 + 3 from the other. */
    @Test
    void ofTwoWiresByHand() {
        Rings rings = new Rings(new double[] {4, 4});
        double[] rise = rings.riseKelvin(new double[] {3, 1}, 1 / (4 * Math.PI), rings.anyOrder());
        assertEquals(2 * Math.log(2) + 1, rise[0], 1e-12);
        assertEquals(-2 * Math.log(2) + 3, rise[1], 1e-12);
    }

    @Test
    void equalOnePassForEachWire() {
        Random random = new Random(11);
        double[] rooms = {2.9, 4.4, 6.25, 9.6, 31};
        for (int run = 0; run < 200; run++) {
            int count = 1 + random.nextInt(60);
            double[] square = new double[count];
            for (int i = 0; i < count; i++) {
                square[i] = rooms[random.nextInt(rooms.length)];
            }
            double[] heat = heatOf(random, square);
            Rings rings = new Rings(square);
            int[] order = rings.anyOrder();
            rings.riseKelvin(heatOf(random, square), CONDUCTIVITY, order);
            double[] rise = rings.riseKelvin(heat, CONDUCTIVITY, order);
            double most = Arrays.stream(rise).map(Math::abs).max().orElseThrow();
            for (int middle = 0; middle < count; middle++) {
                assertEquals(plainRise(middle, square, heat), rise[middle], 1e-10 * (1 + most), "run " + run);
            }
        }
    }

    private static double[] heatOf(Random random, double[] square) {
        return Arrays.stream(square)
                .map(each -> random.nextInt(3) == 0 ? 0 : random.nextInt(6) == 0 ? 1.5 : 4 * random.nextDouble())
                .toArray();
    }

    private static double plainRise(int middle, double[] squareMm2, double[] heat) {
        List<Integer> others = IntStream.range(0, heat.length)
                .boxed()
                .filter(i -> i != middle)
                .sorted(Comparator.comparingDouble((Integer i) -> -heat[i] / squareMm2[i]))
                .collect(Collectors.toList());
        double inside = heat[middle];
        double square = squareMm2[middle];
        double rise = 0;
        for (int i : others) {
            double next = square + squareMm2[i];
            rise += (inside - heat[i] * square / squareMm2[i]) * Math.log(next / square) + heat[i];
            inside += heat[i];
            square = next;
        }
        return rise / (4 * Math.PI * CONDUCTIVITY);
    }
}
