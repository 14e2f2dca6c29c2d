package org.ohmloom.solve.envelope;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;

/** Rules and weights drawn at random for 1 to 16 blocks, and a judge of combinations that shares no code with the search. */
final class RandomRules {
    private final int count;
    private final List<BitSet> needs = new ArrayList<>();
    private final int controls;
    private final long[] resting;
    private final List<int[]> conflicts = new ArrayList<>();
    private final List<int[]> limitCounts = new ArrayList<>();
    private final List<Integer> limitMost = new ArrayList<>();
    private final List<Long> together = new ArrayList<>();
    private final double[] weights;

    RandomRules(Random random) {
        count = 1 + random.nextInt(16);
        controls = 1 + random.nextInt(count + 2);
        resting = new long[count];
        weights = new double[count];
        for (int block = 0; block < count; block++) {
            BitSet own = new BitSet();
            int needed = random.nextInt(8) == 0 ? 0 : 1 + random.nextInt(3);
            for (int each = 0; each < needed; each++) {
                own.set(random.nextInt(controls));
            }
            needs.add(own);
            weights[block] = random.nextInt(6) == 0 ? 0 : Math.round(100 * (random.nextDouble() * 20 - 6)) / 100.0;
            if (block > 0 && random.nextInt(10) == 0) {
                resting[block] |= 1L << random.nextInt(block);
            }
        }
        for (int each = random.nextInt(3); each > 0 && count > 1; each--) {
            int one = random.nextInt(count);
            conflicts.add(new int[] {one, (one + 1 + random.nextInt(count - 1)) % count});
        }
        for (int each = random.nextInt(5); each > 0; each--) {
            int[] counts = new int[count];
            for (int block = 0; block < count; block++) {
                counts[block] = random.nextInt(3) == 0 ? 1 + random.nextInt(2) : 0;
            }
            limitCounts.add(counts);
            limitMost.add(1 + random.nextInt(3));
        }
        for (int each = random.nextInt(3); each > 0; each--) {
            long first = 1L << random.nextInt(count);
            long second = 1L << random.nextInt(count);
            long third = 1L << random.nextInt(count);
            together.add(first | second | third);
        }
    }

    double[] weights() {
        return weights.clone();
    }

    Allowed allowed() {
        int[][] numbers = needs.stream().map(own -> own.stream().toArray()).toArray(int[][]::new);
        Allowed allowed = new Allowed(numbers, controls);
        for (int block = 0; block < count; block++) {
            allowed.rests(block, resting[block]);
        }
        conflicts.forEach(pair -> allowed.conflict(pair[0], pair[1]));
        for (int limit = 0; limit < limitCounts.size(); limit++) {
            allowed.limit(limitCounts.get(limit), limitMost.get(limit));
        }
        together.forEach(allowed::together);
        return allowed;
    }

    double bestByTrying() {
        double best = Double.NEGATIVE_INFINITY;
        for (long on = 0; on < 1L << count; on++) {
            if (isAllowed(on)) {
                best = Math.max(best, value(on));
            }
        }
        return best;
    }

    private double value(long on) {
        double sum = 0;
        for (int block = 0; block < count; block++) {
            sum += has(on, block) ? weights[block] : 0;
        }
        return sum;
    }

    boolean isAllowed(long on) {
        BitSet closed = new BitSet();
        for (int block = 0; block < count; block++) {
            if (has(on, block)) {
                closed.or(needs.get(block));
            }
        }
        for (int block = 0; block < count; block++) {
            BitSet missing = (BitSet) needs.get(block).clone();
            missing.andNot(closed);
            boolean runs = missing.isEmpty() && (resting[block] & on) == 0;
            if (runs != has(on, block)) {
                return false;
            }
        }
        for (int[] pair : conflicts) {
            if (has(on, pair[0]) && has(on, pair[1])) {
                return false;
            }
        }
        for (int limit = 0; limit < limitCounts.size(); limit++) {
            int used = 0;
            for (int block = 0; block < count; block++) {
                used += has(on, block) ? limitCounts.get(limit)[block] : 0;
            }
            if (used > limitMost.get(limit)) {
                return false;
            }
        }
        return together.stream().allMatch(set -> (set & on) == 0 || (set & on) == set);
    }

    private static boolean has(long on, int block) {
        return (on >>> block & 1) != 0;
    }
}
