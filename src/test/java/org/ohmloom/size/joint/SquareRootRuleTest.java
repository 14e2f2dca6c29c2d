package org.ohmloom.size.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

/**
 * Where all budgets are equal and nothing is held, the bound is the closed form of the square-root rule: area in proportion
 * to the root of the current, least volume rho x (sum of L sqrt(I))^2 / dU along a run (by Lagrange's multiplier; the
 * optimum of radial low-voltage networks in Walkden, Optimising the design of low-voltage cable networks, IEE
 * Proceedings).
 */
@BesideOthers
class SquareRootRuleTest {
    /** Agreement with the closed form, as a ratio. */
    private static final double CLOSED_FORM = 1e-6;
    /** Resistivity of annealed copper at 20 C, ohm mm2/m: 1.724e-8 ohm m, IEC 60028. */
    private static final double RHO = 1.724e-2;

    /** Lengths in m and currents in A of the wires; each budget passes the wires it names and may lose the volts. */
    private static DualAscent.Found bound(double[] lengths, double[] amps, int[][] ways, double... volts) {
        double[] free = new double[lengths.length];
        double[] none = new double[lengths.length];
        Arrays.fill(none, Double.POSITIVE_INFINITY);
        double[][] weights = new double[ways.length][];
        for (int way = 0; way < ways.length; way++) {
            // cost A L in mm2 m, drop I rho L / A: their product is I rho L^2
            weights[way] = Arrays.stream(ways[way])
                    .mapToDouble(wire -> amps[wire] * RHO * lengths[wire] * lengths[wire])
                    .toArray();
        }
        return DualAscent.of(Relaxation.of(free, none, volts, ways, weights));
    }

    @Test
    void taperRuleAreaGoesWithTheRootOfTheCurrentAlongARun() {
        double[] lengths = {2, 3, 1};
        double[] amps = {9, 4, 1};
        // (2 x 3 + 3 x 2 + 1 x 1)^2 = 169
        double closed = RHO * 169 / 0.5;
        DualAscent.Found found = bound(lengths, amps, new int[][] {{0, 1, 2}}, 0.5);
        assertEquals(closed, found.value(), CLOSED_FORM * closed);
        // cost sqrt(w) = L x area: areas as 3 to 2 to 1
        double first = Math.sqrt(found.prices()[0] * 9 * RHO);
        double last = Math.sqrt(found.prices()[0] * 1 * RHO);
        assertEquals(3, first / last, CLOSED_FORM);
        assertEquals(closed, first * 2 + first / 3 * 2 * 3 + last, 10 * CLOSED_FORM * closed);
    }

    @Test
    void taperEightNinthsIsWhatAUniformlyLoadedRunNeedsOfOneArea() {
        // N equal spans and loads, one area: rho x sum L x sum L I / dU. The rows are of the same closed form
        double[][] published = {{2, 0.97140}, {3, 0.95508}, {5, 0.93685}, {10, 0.91786}, {100, 0.89280}};
        for (double[] row : published) {
            int spans = (int) row[0];
            double[] lengths = new double[spans];
            double[] amps = new double[spans];
            int[][] ways = new int[spans][];
            double[] volts = new double[spans];
            double sumRoots = 0;
            double sumLoads = 0;
            for (int span = 0; span < spans; span++) {
                lengths[span] = 1;
                amps[span] = spans - span;
                sumRoots += Math.sqrt(amps[span]);
                sumLoads += amps[span];
                ways[span] = IntStream.rangeClosed(0, span).toArray();
                volts[span] = 0.6;
            }
            double one = RHO * spans * sumLoads / 0.6;
            double closed = RHO * sumRoots * sumRoots / 0.6;
            double found = bound(lengths, amps, ways, volts).value();
            assertEquals(closed, found, CLOSED_FORM * closed, spans + " spans");
            assertEquals(row[1], found / one, 1e-5, spans + " spans");
        }
        // without end: (integral of sqrt(x))^2 / (1 x integral of x) = (2/3)^2 / (1/2) = 8/9
        assertEquals(8.0 / 9, Math.pow(2.0 / 3, 2) / 0.5, CLOSED_FORM);
    }

    @Test
    void taperTreeCheckNeedsAtLeast33Point27170SquareMillimetreMetres() {
        // a from the root to b, c; c to d, e. Loads b 5 A, d 8 A, e 3 A; each way may lose 0.36 V
        double[] lengths = {2, 3, 1.5, 4, 2.5};
        double[] amps = {16, 5, 11, 8, 3};
        int[][] ways = {{0, 1}, {0, 2, 3}, {0, 2, 4}};
        DualAscent.Found found = bound(lengths, amps, ways, 0.36, 0.36, 0.36);
        assertEquals(33.27170, found.value(), 5e-6 + CLOSED_FORM * 33.27);
        // K(edge and what hangs on it) = (L sqrt(rho I) + sqrt(sum of K below))^2, least volume K(root) / dU
        double d = Math.pow(4 * Math.sqrt(RHO * 8), 2);
        double e = Math.pow(2.5 * Math.sqrt(RHO * 3), 2);
        double c = Math.pow(1.5 * Math.sqrt(RHO * 11) + Math.sqrt(d + e), 2);
        double b = Math.pow(3 * Math.sqrt(RHO * 5), 2);
        double root = Math.pow(2 * Math.sqrt(RHO * 16) + Math.sqrt(b + c), 2);
        assertEquals(root / 0.36, found.value(), CLOSED_FORM * found.value());
        double[] areas = {5.049, 1.031, 3.897, 3.104, 0.727};
        Relaxation relaxation = Relaxation.of(
                new double[5],
                new double[] {1e9, 1e9, 1e9, 1e9, 1e9},
                new double[] {0.36, 0.36, 0.36},
                ways,
                Arrays.stream(ways)
                        .map(way -> Arrays.stream(way)
                                .mapToDouble(wire -> amps[wire] * RHO * lengths[wire] * lengths[wire])
                                .toArray())
                        .toArray(double[][]::new));
        double[] sums = relaxation.weightSums(found.prices());
        for (int wire = 0; wire < 5; wire++) {
            assertEquals(areas[wire], relaxation.cost(wire, sums[wire]) / lengths[wire], 6e-4, "wire " + wire);
        }
    }
}
