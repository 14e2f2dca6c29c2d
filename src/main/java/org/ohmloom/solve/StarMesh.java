package org.ohmloom.solve;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Solves a network of conductances for the voltages that given currents cause, by star-mesh elimination.
 *
 * <p>A point joined to others by conductances g1, g2, ... with the sum G is replaced by a mesh between those others,
 * gi x gj / G for each pair (Rosen, Journal of the IEE 62, 1924; for three it is the star-triangle transformation); its
 * current is shared out among them in the ratio of the conductances. Point after point goes, in the order of {@link
 * EliminationOrder}, until only the datum is left; on the way back each voltage is the mean of its neighbours' weighted
 * by conductance, plus current over G.
 *
 * <p>This is the Cholesky factorisation of the nodal matrix in other words, with one difference: the diagonal, the sum G,
 * is never stored and reduced, it is added up anew from the conductances that are left. Nothing is ever subtracted, so
 * nothing cancels, and every result is right to some 14 digits whether the conductances lie between 1e-4 and 1e4 S or
 * between 1e-15 and 1e15 S. Only a load that holds its power brings a negative conductance in; where a sum is no longer
 * positive the network has lost its stable operating point.
 *
 * <p>Time and memory grow with the connections made; for trees and chains in proportion to the points.
 */
final class StarMesh {

    private final EliminationOrder order;
    private final int[] from;
    private final int[] to;

    /** For each branch where its conductance goes: index into {@link #mutual}, or -1 - place for one to the datum. */
    private final int[] slot;

    /** First connection of each place in the arrays below. */
    private final int[] first;

    private final int[] later;
    private final double[] mutual;
    private final double[] toDatum;
    private final double[] sum;
    private double @Nullable [] eliminated;

    /**
     * Prepares the elimination for branches of one pattern.
     *
     * @param order order of elimination
     * @param from  one end of each branch; -1 is the datum
     * @param to    the other end
     */
    StarMesh(EliminationOrder order, int[] from, int[] to) {
        this.order = order;
        this.from = from;
        this.to = to;
        int points = order.place().length;
        first = new int[points + 1];
        for (int place = 0; place < points; place++) {
            first[place + 1] = first[place] + order.later()[place].length;
        }
        later = new int[first[points]];
        for (int place = 0; place < points; place++) {
            int[] touched = order.later()[place];
            System.arraycopy(touched, 0, later, first[place], touched.length);
        }
        mutual = new double[later.length];
        toDatum = new double[points];
        sum = new double[points];
        slot = new int[from.length];
        for (int branch = 0; branch < from.length; branch++) {
            slot[branch] = slotOf(from[branch], to[branch]);
        }
    }

    private int slotOf(int from, int to) {
        if (from < 0 || to < 0) {
            return -1 - order.place()[Math.max(from, to)];
        }
        int a = Math.min(order.place()[from], order.place()[to]);
        int b = Math.max(order.place()[from], order.place()[to]);
        return Arrays.binarySearch(later, first[a], first[a + 1], b);
    }

    /**
     * Eliminates all points; nothing is left to do when the conductances are those of the last time.
     *
     * @param siemens conductance of each branch
     * @return false when a sum of conductances is not positive: no stable solution near these conductances
     */
    boolean eliminate(double[] siemens) {
        if (Arrays.equals(siemens, eliminated)) {
            return true;
        }
        eliminated = null;
        Arrays.fill(mutual, 0);
        Arrays.fill(toDatum, 0);
        for (int branch = 0; branch < siemens.length; branch++) {
            if (slot[branch] >= 0) {
                mutual[slot[branch]] += siemens[branch];
            } else {
                toDatum[-1 - slot[branch]] += siemens[branch];
            }
        }
        for (int place = 0; place < sum.length; place++) {
            double total = toDatum[place];
            for (int each = first[place]; each < first[place + 1]; each++) {
                total += mutual[each];
            }
            if (!(total > 0)) {
                return false;
            }
            sum[place] = total;
            for (int each = first[place]; each < first[place + 1]; each++) {
                mesh(place, each, mutual[each] / total);
            }
        }
        eliminated = siemens.clone();
        return true;
    }

    /** Joins one neighbour of the point that goes to those after it and to the datum. */
    private void mesh(int place, int neighbour, double share) {
        int target = later[neighbour];
        toDatum[target] += share * toDatum[place];
        int at = first[target];
        for (int each = neighbour + 1; each < first[place + 1]; each++) {
            while (later[at] != later[each]) {
                at++;
            }
            mutual[at] += share * mutual[each];
        }
    }

    /**
     * Voltages that currents into the points cause, after {@link #eliminate}.
     *
     * @param intoAmps current fed into each point, A
     * @return voltage of each point against the datum, V
     */
    double[] volts(double[] intoAmps) {
        double[] at = new double[sum.length];
        for (int point = 0; point < at.length; point++) {
            at[order.place()[point]] = intoAmps[point];
        }
        for (int place = 0; place < at.length; place++) {
            double perSiemens = at[place] / sum[place];
            for (int each = first[place]; each < first[place + 1]; each++) {
                at[later[each]] += mutual[each] * perSiemens;
            }
        }
        for (int place = at.length - 1; place >= 0; place--) {
            double weighted = at[place];
            for (int each = first[place]; each < first[place + 1]; each++) {
                weighted += mutual[each] * at[later[each]];
            }
            at[place] = weighted / sum[place];
        }
        double[] volts = new double[at.length];
        for (int point = 0; point < volts.length; point++) {
            volts[point] = at[order.place()[point]];
        }
        return volts;
    }

    /** One end of each branch; -1 is the datum. */
    int[] from() {
        return from;
    }

    /** The other end of each branch; -1 is the datum. */
    int[] to() {
        return to;
    }
}
