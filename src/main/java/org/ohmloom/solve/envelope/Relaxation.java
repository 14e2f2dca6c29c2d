package org.ohmloom.solve.envelope;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A bound on what free blocks can add: their weights summed under some of the rules only.
 *
 * <p>Blocks that run together count as one unit with the sum of their weights. Each unit is held by at most one limit, the
 * tightest it is in; a limit lets in the units worth most for each load until it is full, the last one in part. What is in
 * no limit counts when it adds something. Leaving rules out, and taking part of a unit, can only raise a maximum, so no
 * allowed combination has more (the linear relaxation of the knapsack; Dantzig, Operations Research 5, 1957).
 */
final class Relaxation {
    private final Allowed allowed;
    private final List<Long> units = new ArrayList<>();
    /** For each unit the limit that holds it, -1 for none. */
    private final int[] holder;

    /** A unit a limit holds: its weight and the number of its loads. */
    private static final class Share {
        private final double weight;
        private final int count;

        private Share(double weight, int count) {
            this.weight = weight;
            this.count = count;
        }

        private double each() {
            return weight / count;
        }
    }

    Relaxation(Allowed allowed) {
        this.allowed = allowed;
        long left = allowed.all();
        while (left != 0) {
            long unit = grown(Long.lowestOneBit(left));
            units.add(unit);
            left &= ~unit;
        }
        holder = units.stream().mapToInt(this::tightest).toArray();
    }

    private long grown(long start) {
        long unit = start;
        long before;
        do {
            before = unit;
            for (long set : allowed.togetherSets()) {
                if ((set & unit) != 0) {
                    unit |= set;
                }
            }
        } while (unit != before);
        return unit;
    }

    private int tightest(long unit) {
        int best = -1;
        double bestRatio = 1;
        for (int number = 0; number < allowed.limits().size(); number++) {
            Allowed.Limit limit = allowed.limits().get(number);
            int total = limit.used(allowed.all());
            if (limit.used(unit) > 0 && (double) limit.most() / total < bestRatio) {
                bestRatio = (double) limit.most() / total;
                best = number;
            }
        }
        return best;
    }

    /** The most the free blocks can add. */
    double free(Fixing at, double[] weights) {
        double sum = 0;
        List<List<Share>> held = new ArrayList<>();
        allowed.limits().forEach(limit -> held.add(new ArrayList<>()));
        long free = at.free(allowed.all());
        for (int number = 0; number < units.size(); number++) {
            long unit = units.get(number) & free;
            double weight = weight(unit, weights);
            if (weight > 0 && holder[number] >= 0) {
                Allowed.Limit limit = allowed.limits().get(holder[number]);
                held.get(holder[number]).add(new Share(weight, Math.max(1, limit.used(unit))));
            } else if (weight > 0) {
                sum += weight;
            }
        }
        for (int number = 0; number < held.size(); number++) {
            Allowed.Limit limit = allowed.limits().get(number);
            sum += filled(held.get(number), limit.most() - limit.used(at.on()));
        }
        return sum;
    }

    private static double weight(long blocks, double[] weights) {
        double weight = 0;
        for (long left = blocks; left != 0; left &= left - 1) {
            weight += weights[Long.numberOfTrailingZeros(left)];
        }
        return weight;
    }

    private static double filled(List<Share> shares, int room) {
        shares.sort(Comparator.comparingDouble(Share::each).reversed());
        double sum = 0;
        int left = room;
        for (Share share : shares) {
            int taken = Math.min(left, share.count);
            sum += taken == share.count ? share.weight : share.each() * taken;
            left -= taken;
        }
        return sum;
    }
}
