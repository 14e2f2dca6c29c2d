package org.ohmloom.size.joint;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.units.Require;

/**
 * One thing to choose a size for: a wire, or all wires that keep one size. Its options run from the cheapest to the
 * dearest; an option that resists no less than a cheaper one is of no use and is left out by {@link #useful}.
 */
public final class Part {
    private final String id;
    private final double[] costs;
    private final double[][] ohms;

    private Part(String id, double[] costs, double[][] ohms) {
        this.id = id;
        this.costs = costs;
        this.ohms = ohms;
    }

    /**
     * A part with its options.
     *
     * @param id    what it is called
     * @param costs cost of each option, in kg of copper or in money, 0 or more, never falling
     * @param ohms  curves of resistance, ohm, one value for each option: one curve for each state a wire is in, since its
     *              temperature differs, and for each wire of a part of several
     */
    public static Part of(String id, double[] costs, double[]... ohms) {
        Require.that(costs.length > 0, "%s has no option", id);
        for (int option = 0; option < costs.length; option++) {
            Require.notNegative(costs[option], "cost of %s", id);
            Require.that(option == 0 || costs[option] >= costs[option - 1], "costs of %s must not fall", id);
        }
        double[][] curves = new double[ohms.length][];
        for (int curve = 0; curve < ohms.length; curve++) {
            Require.that(ohms[curve].length == costs.length, "%s has %s options", id, costs.length);
            curves[curve] = ohms[curve].clone();
            for (double each : curves[curve]) {
                Require.notNegative(each, "resistance of %s", id);
            }
        }
        return new Part(id, costs.clone(), curves);
    }

    /** The options worth having, in order: each resists less than every cheaper one on some curve. */
    public static List<Integer> useful(double[] costs, double[]... ohms) {
        List<Integer> kept = new ArrayList<>();
        for (int option = 0; option < costs.length; option++) {
            int candidate = option;
            if (kept.stream().noneMatch(cheaper -> noBetter(cheaper, candidate, ohms))) {
                kept.add(option);
            }
        }
        return kept;
    }

    private static boolean noBetter(int cheaper, int dearer, double[][] ohms) {
        for (double[] curve : ohms) {
            if (curve[dearer] < curve[cheaper]) {
                return false;
            }
        }
        return true;
    }

    /** What it is called. */
    public String id() {
        return id;
    }

    /** Count of its options, 1 or more. */
    public int options() {
        return costs.length;
    }

    /** Cost of an option. */
    public double cost(int option) {
        return costs[option];
    }

    /** Count of its curves. */
    int curves() {
        return ohms.length;
    }

    /** Resistance of an option on a curve, ohm. */
    public double ohms(int curve, int option) {
        return ohms[curve][option];
    }

    /** The smallest product of cost and resistance over its options on a curve: no option has less. */
    double product(int curve) {
        double least = Double.POSITIVE_INFINITY;
        for (int option = 0; option < costs.length; option++) {
            least = Math.min(least, costs[option] * ohms[curve][option]);
        }
        return least;
    }

    /** This part with some of its options only, in their order. */
    Part only(int[] options) {
        double[] fewer = new double[options.length];
        double[][] curves = new double[ohms.length][options.length];
        for (int k = 0; k < options.length; k++) {
            fewer[k] = costs[options[k]];
            for (int curve = 0; curve < ohms.length; curve++) {
                curves[curve][k] = ohms[curve][options[k]];
            }
        }
        return new Part(id, fewer, curves);
    }
}
