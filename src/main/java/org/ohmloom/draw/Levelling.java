package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * Moves things that stand below each other to where each would like to be, keeping their order and the gaps between them:
 * neighbours that would come too close stand together at the weighted mean of what they want (pool adjacent violators).
 */
public final class Levelling {
    private final List<Pool> pools = new ArrayList<>();
    private final List<Double> stacks = new ArrayList<>();

    /** Neighbours that stand as close as they may. */
    private record Pool(double placeMm, double weight, int count) {
        Pool with(Pool other) {
            double sum = weight + other.weight;
            return new Pool((placeMm * weight + other.placeMm * other.weight) / sum, sum, count + other.count);
        }
    }

    /**
     * Adds the next thing below the others.
     *
     * @param stackedMm where its upper side is when all stand as close as they may, mm below that of the first
     * @param wantedMm  where it would like its upper side, mm
     * @param weight    how much it would like that, more than 0
     */
    public void add(double stackedMm, double wantedMm, double weight) {
        stacks.add(stackedMm);
        Pool pool = new Pool(wantedMm - stackedMm, weight, 1);
        while (!pools.isEmpty() && pools.get(pools.size() - 1).placeMm() > pool.placeMm()) {
            pool = pool.with(pools.remove(pools.size() - 1));
        }
        pools.add(pool);
    }

    /** Where the upper side of each comes to stand, mm, in the order they were added. */
    public List<Double> topsMm() {
        List<Double> tops = new ArrayList<>();
        for (Pool pool : pools) {
            for (int k = 0; k < pool.count(); k++) {
                tops.add(pool.placeMm() + stacks.get(tops.size()));
            }
        }
        return tops;
    }
}
