package org.ohmloom.solve.envelope;

import java.util.OptionalDouble;

/** What a {@link Maximum} is sought of. */
interface Objective {
    /**
     * Writes for each block that is not off the most it can add in any combination that agrees with what is decided, and
     * returns the most of what is there in any case. Their sum over the running blocks is never less than {@link #value}.
     *
     * @param at      what is decided
     * @param weights room for one number for each block
     * @return the part that is there in any case; minus infinity where no combination counts
     */
    double weights(Fixing at, double[] weights);

    /** Its value for one combination; empty where the combination does not count. */
    OptionalDouble value(long on);

    /** How much a block matters beyond its weight; those with much are decided first. */
    default double influence(int block) {
        return 0;
    }

    /** The sum of fixed weights. */
    static Objective sum(double... fixed) {
        return new Objective() {
            @Override
            public double weights(Fixing at, double[] weights) {
                System.arraycopy(fixed, 0, weights, 0, fixed.length);
                return 0;
            }

            @Override
            public OptionalDouble value(long on) {
                double sum = 0;
                for (long left = on; left != 0; left &= left - 1) {
                    sum += fixed[Long.numberOfTrailingZeros(left)];
                }
                return OptionalDouble.of(sum);
            }
        };
    }
}
