package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * The moments that stand for all of time: every combination of the parts of all clocks, each with the product of their
 * shares as its weight, for clocks that know nothing of each other meet in every combination.
 *
 * <p>Up to {@link #MOST_EXACT} combinations all of them are taken, which covers any 12 outputs: n outputs on one clock cut its
 * period into at most 2n stretches, n outputs on clocks of their own make 2^n combinations. They are walked so that
 * from one to the next a single clock goes one part on (reflected counting, Gray, United States patent 2632058, 1953), so each
 * starts from a near solution.
 *
 * <p>Beyond that a sample stands for them: {@link #REPLICATES} times {@link #STRATA} moments, in each of which every clock is
 * met once in each of as many equal slices of its period, in random order (McKay, Beckman and Conover, Technometrics 21,
 * 1979). The replicates are independent, so their scatter is the error of the sample. The seed is fixed: the same
 * network gives the same numbers.
 *
 * <p>In networks of more than some 2000 branches both counts shrink with the branches, see {@link #MOST_WORK}; how uncertain that
 * leaves the RMS currents is told with them.
 */
final class MomentPlan {

    /** Most combinations that are all taken. */
    static final int MOST_EXACT = 4096;

    /** Independent samples. */
    static final int REPLICATES = 16;

    /** Moments of each of them. */
    static final int STRATA = 64;

    /** Most moments of a pass times branches of the network, where all combinations are taken; a sample takes a quarter. */
    static final int MOST_WORK = 8_000_000;

    /** Moments of each sample in the largest networks. */
    static final int FEWEST_STRATA = 8;

    private static final long SEED = 20240229;

    private final List<List<Part>> parts;
    private final int strata;
    private final int[][] sampled;
    private final int count;

    /**
     * Plans the moments of clocks.
     *
     * @param parts    the parts of each clock
     * @param branches count of branches that have to be solved in each moment
     */
    MomentPlan(List<List<Part>> parts, int branches) {
        this.parts = parts;
        int affordable = MOST_WORK / Math.max(1, branches);
        strata = Math.max(FEWEST_STRATA, Math.min(STRATA, affordable / 4 / REPLICATES));
        double combinations = combinations(parts);
        int exact = Math.max(REPLICATES * FEWEST_STRATA, Math.min(MOST_EXACT, affordable));
        sampled = combinations <= exact ? new int[0][] : sample(parts);
        count = sampled.length == 0 ? (int) combinations : sampled.length;
    }

    /** How many combinations there are. */
    static double combinations(List<List<Part>> parts) {
        double combinations = 1;
        for (List<Part> own : parts) {
            combinations *= own.size();
        }
        return combinations;
    }

    private int[][] sample(List<List<Part>> parts) {
        Random random = new Random(SEED);
        int[][] sample = new int[REPLICATES * strata][parts.size()];
        for (int replicate = 0; replicate < REPLICATES; replicate++) {
            for (int clock = 0; clock < parts.size(); clock++) {
                int[] order = shuffled(random);
                for (int stratum = 0; stratum < strata; stratum++) {
                    double at = (order[stratum] + random.nextDouble()) / strata;
                    sample[replicate * strata + stratum][clock] = partAt(parts.get(clock), at);
                }
            }
        }
        return sample;
    }

    private int[] shuffled(Random random) {
        int[] order = new int[strata];
        for (int each = 0; each < strata; each++) {
            int other = random.nextInt(each + 1);
            order[each] = order[other];
            order[other] = each;
        }
        return order;
    }

    private static int partAt(List<Part> parts, double fraction) {
        double end = 0;
        for (int part = 0; part < parts.size(); part++) {
            end += parts.get(part).shareFraction();
            if (fraction < end) {
                return part;
            }
        }
        return parts.size() - 1;
    }

    /** Count of moments. */
    int count() {
        return count;
    }

    /** Whether they are a sample. */
    boolean isSampled() {
        return sampled.length > 0;
    }

    /** The independent sample a moment belongs to; 0 when all combinations are taken. */
    int replicate(int moment) {
        return isSampled() ? moment / strata : 0;
    }

    /** The part each clock is in. */
    List<Part> at(int moment) {
        List<Part> at = new ArrayList<>(parts.size());
        if (isSampled()) {
            for (int clock = 0; clock < parts.size(); clock++) {
                at.add(parts.get(clock).get(sampled[moment][clock]));
            }
            return at;
        }
        int block = count;
        for (List<Part> own : parts) {
            boolean backwards = moment / block % 2 == 1;
            block /= own.size();
            int digit = moment / block % own.size();
            at.add(own.get(backwards ? own.size() - 1 - digit : digit));
        }
        return at;
    }

    /** Share of time a moment stands for. */
    double weight(int moment) {
        if (isSampled()) {
            return 1.0 / count;
        }
        double weight = 1;
        for (Part part : at(moment)) {
            weight *= part.shareFraction();
        }
        return weight;
    }
}
