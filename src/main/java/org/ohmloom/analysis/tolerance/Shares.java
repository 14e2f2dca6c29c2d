package org.ohmloom.analysis.tolerance;

import java.util.ArrayList;
import java.util.List;

/**
 * The share of each kind of input in the variance of a result.
 *
 * <p>Every run is solved again with one kind at its drawn values and all others at their means, for each kind: the budget of
 * JCGM 101:2008, Annex B. The sum of what the kinds make alone is held against the whole result run by run; what it does not
 * explain (1 - R2) is due to kinds together, and no share of it is given to any. The rest is divided by the variances of the
 * kinds alone, so that the shares and the remainder are the whole. First-order shares of variance are those of Sobol,
 * Mathematics and Computers in Simulation 55 (2001) 271-280; the standard error is that of a ratio of means (Cochran, Sampling
 * Techniques, 1977, 6.4).
 *
 * @param all               shares, in the order of the kinds
 * @param explainedFraction how much of the variance they explain, R2: the sum of the shares
 */
public record Shares(List<Share> all, double explainedFraction) {

    public Shares {
        all = List.copyOf(all);
    }

    /** The largest. */
    public Share largest() {
        return all.stream()
                .reduce((one, other) -> other.fraction() > one.fraction() ? other : one)
                .orElseThrow();
    }

    /**
     * The shares of a result that varies.
     *
     * @param kinds the kinds
     * @param whole the result in each run
     * @param alone the result of each kind alone in each run
     */
    static Shares of(List<SpreadKind> kinds, double[] whole, double[][] alone) {
        int runs = whole.length;
        double[] left = whole.clone();
        double[] squares = new double[runs];
        double[][] square = new double[kinds.size()][runs];
        for (int kind = 0; kind < kinds.size(); kind++) {
            double mean = Sample.mean(alone[kind]);
            for (int run = 0; run < runs; run++) {
                left[run] -= alone[kind][run];
                square[kind][run] = Math.pow(alone[kind][run] - mean, 2);
                squares[run] += square[kind][run];
            }
        }
        double explained = Math.max(0, 1 - Sample.variance(left) / Sample.variance(whole));
        double total = Sample.mean(squares);
        List<Share> shares = new ArrayList<>();
        for (int kind = 0; kind < kinds.size(); kind++) {
            double share = total > 0 ? Sample.mean(square[kind]) / total : 0;
            double[] off = new double[runs];
            for (int run = 0; run < runs; run++) {
                off[run] = square[kind][run] - share * squares[run];
            }
            double error = total > 0 ? Math.sqrt(Sample.variance(off) / runs) / total : 0;
            shares.add(new Share(kinds.get(kind), explained * share, explained * error));
        }
        return new Shares(shares, total > 0 ? explained : 0);
    }
}
