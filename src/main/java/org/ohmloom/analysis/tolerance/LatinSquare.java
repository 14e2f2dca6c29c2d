package org.ohmloom.analysis.tolerance;

import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;

/**
 * Shares for the runs of one input, one in each of as many equal slices and in random order: Latin hypercube sampling, McKay,
 * Beckman and Conover, Technometrics 21 (1979) 239-245. Follows from the seed and the name of the input alone, so neither
 * threads nor other inputs change it.
 */
final class LatinSquare {

    /** Fowler, Noll and Vo's hash of 64 bits, variant 1a: its offset and prime. */
    private static final long OFFSET = 0xcbf29ce484222325L, PRIME = 0x100000001b3L;

    private LatinSquare() {}

    /** The shares, each more than 0 and less than 1. */
    static double[] shares(long seed, String input, int runs) {
        long name = OFFSET;
        for (byte each : input.getBytes(StandardCharsets.UTF_8)) {
            name = (name ^ each) * PRIME;
        }
        SplittableRandom random = new SplittableRandom(new SplittableRandom(seed).nextLong() ^ name);
        double[] shares = new double[runs];
        for (int k = 0; k < runs; k++) {
            double within = random.nextDouble();
            shares[k] = (k + Math.max(within, Double.MIN_NORMAL)) / runs;
            int other = random.nextInt(k + 1);
            double kept = shares[other];
            shares[other] = shares[k];
            shares[k] = kept;
        }
        return shares;
    }
}
