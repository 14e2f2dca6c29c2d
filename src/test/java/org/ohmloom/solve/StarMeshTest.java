package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

/** Star-mesh elimination, by hand and against the sparse Cholesky factorisation of EJML. */
@BesideOthers
class StarMeshTest {

    private static final double EXACT = 1e-13;

    private static StarMesh mesh(int points, int[] from, int[] to) {
        return new StarMesh(EliminationOrder.of(points, from, to, () -> false), from, to);
    }

    @Test
    void aStarOfThreeBecomesATriangle() {
        // Points 0 and 1 and the datum around point 2, 1 ohm each; 1 A into point 0 and out at the datum:
        // 2 V at point 0, 1 V at points 2 and 1
        StarMesh mesh = mesh(3, new int[] {0, 1, 2}, new int[] {2, 2, -1});
        assertTrue(mesh.eliminate(new double[] {1, 1, 1}));
        assertArrayEquals(new double[] {2, 1, 1}, mesh.volts(new double[] {1, 0, 0}), EXACT);
    }

    @Test
    void parallelBranchesAddUp() {
        // 2 S + 3 S to the datum: 10 A make 2 V
        StarMesh mesh = mesh(1, new int[] {0, -1}, new int[] {-1, 0});
        assertTrue(mesh.eliminate(new double[] {2, 3}));
        assertArrayEquals(new double[] {2}, mesh.volts(new double[] {10}), EXACT);
    }

    @Test
    void aNegativeConductanceThatOutweighsTheOthersIsRefused() {
        StarMesh mesh = mesh(1, new int[] {0, 0}, new int[] {-1, -1});
        assertTrue(mesh.eliminate(new double[] {2, -1.9}));
        assertFalse(mesh.eliminate(new double[] {2, -2.1}));
    }

    @Test
    void aTreeIsEliminatedWithoutNewConnections() {
        Random random = new Random(3);
        int points = 2_000;
        int[] from = new int[points];
        int[] to = new int[points];
        for (int point = 0; point < points; point++) {
            from[point] = point;
            to[point] = point == 0 ? -1 : random.nextInt(point);
        }
        EliminationOrder order = EliminationOrder.of(points, from, to, () -> false);
        assertEquals(
                points - 1,
                Arrays.stream(order.later()).mapToInt(each -> each.length).sum());
    }

    @Test
    void ordinaryNetworksAgreeWithSparseCholesky() {
        for (int seed = 0; seed < 50; seed++) {
            Sample sample = new Sample(seed, 2);
            double[] expected = sample.cholesky();
            double[] actual = sample.starMesh();
            for (int point = 0; point < expected.length; point++) {
                assertEquals(expected[point], actual[point], 1e-9 * expected[point], "seed " + seed);
            }
        }
    }

    @Test
    void aClusterOfTinyResistancesHungByALargeOneKeepsItsDigits() {
        // Three points 1 uohm apart in a triangle, hung on 1 Mohm: 1 uA into one of them lifts all to 1 V.
        // The nodal matrix holds 2e6 + 1e-6 in a double; the 1e-6 has four digits left, and so has its answer.
        int[] from = {0, 1, 2, 0};
        int[] to = {1, 2, 0, -1};
        double[] siemens = {1e6, 1e6, 1e6, 1e-6};
        StarMesh mesh = mesh(3, from, to);
        assertTrue(mesh.eliminate(siemens));
        // 1 uA from point 1 to point 0: 1 uohm beside 2 uohm, two thirds of 1e-12 V; point 2 in the middle of it
        double[] expected = {1, 1 + 2e-12 / 3, 1 + 1e-12 / 3};
        assertArrayEquals(expected, mesh.volts(new double[] {0, 1e-6, 0}), 1e-15);
        double lost = Math.abs(1 - Sample.cholesky(3, from, to, siemens, new double[] {0, 1e-6, 0})[0]);
        assertTrue(lost > 1e-6, "the usual way loses digits: " + lost);
    }

    /** A random network: a tree with loops, conductances over some decades either way, a current into each point. */
    private static final class Sample {

        private final int points;
        private final int[] from;
        private final int[] to;
        private final double[] siemens;
        private final double[] amps;

        Sample(int seed, double decades) {
            Random random = new Random(seed);
            points = 3 + random.nextInt(200);
            int branches = points + points / 2;
            from = new int[branches];
            to = new int[branches];
            siemens = new double[branches];
            amps = random.doubles(points).toArray();
            for (int branch = 0; branch < branches; branch++) {
                from[branch] = branch < points ? branch : random.nextInt(points);
                to[branch] = branch < points
                        ? random.nextInt(branch + 1) - 1
                        : (from[branch] + 1 + random.nextInt(points - 1)) % points;
                siemens[branch] = Math.pow(10, decades * (2 * random.nextDouble() - 1));
            }
        }

        double[] starMesh() {
            StarMesh mesh = mesh(points, from, to);
            assertTrue(mesh.eliminate(siemens));
            return mesh.volts(amps);
        }

        double[] cholesky() {
            return cholesky(points, from, to, siemens, amps);
        }

        static double[] cholesky(int points, int[] from, int[] to, double[] siemens, double[] amps) {
            DMatrixRMaj nodal = new DMatrixRMaj(points, points);
            for (int branch = 0; branch < from.length; branch++) {
                add(nodal, from[branch], from[branch], siemens[branch]);
                add(nodal, to[branch], to[branch], siemens[branch]);
                add(nodal, from[branch], to[branch], -siemens[branch]);
                add(nodal, to[branch], from[branch], -siemens[branch]);
            }
            DMatrixSparseTriplet entries = new DMatrixSparseTriplet(points, points, points);
            for (int row = 0; row < points; row++) {
                for (int column = 0; column < points; column++) {
                    if (nodal.get(row, column) != 0) {
                        entries.addItem(row, column, nodal.get(row, column));
                    }
                }
            }
            LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
                    LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
            assertTrue(solver.setA(DConvertMatrixStruct.convert(entries, (DMatrixSparseCSC) null)));
            DMatrixRMaj volts = new DMatrixRMaj(points, 1);
            solver.solve(new DMatrixRMaj(points, 1, true, amps), volts);
            return volts.getData();
        }

        private static void add(DMatrixRMaj nodal, int row, int column, double value) {
            if (row >= 0 && column >= 0) {
                nodal.add(row, column, value);
            }
        }
    }
}
