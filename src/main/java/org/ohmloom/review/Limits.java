package org.ohmloom.review;

/** Compares a computed number with its limit. */
final class Limits {

    /** Rounding of a computation, as a share: a number this close to its limit meets it. */
    private static final double SAME = 1e-9;

    private Limits() {}

    /** Whether a number is beyond its limit by more than rounding. */
    static boolean exceeds(double value, double limit) {
        return value > limit + SAME * Math.abs(limit);
    }
}
