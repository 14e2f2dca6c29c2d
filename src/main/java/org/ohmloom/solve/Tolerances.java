package org.ohmloom.solve;

/** How exact a solution must be to be called one. */
public final class Tolerances {

    /** Largest imbalance of currents at a point over the largest current there, the latter taken as at least 1 A. */
    public static final double IMBALANCE_RATIO = 1e-10;

    /** Largest |V - I R| of a branch over the greater voltage at its ends, the latter taken as at least 1 V. */
    public static final double DROP_RATIO = 1e-10;

    private Tolerances() {}
}
