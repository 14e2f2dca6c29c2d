package org.ohmloom.solve;

import java.util.Arrays;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;

/**
 * The order in which points are eliminated, and which points each one then still touches.
 *
 * <p>Always the point with the fewest neighbours goes next, ties by number (minimum degree; Tinney and Walker, Proceedings
 * of the IEEE 55, 1967). Wires that end in a load go first and a bus bar with hundreds of wires goes last, so a tree of
 * any shape makes no new connections at all. An elimination joins the neighbours of the point that goes.
 *
 * @param place place of each point in the order
 * @param later for each place the places, rising, of the points it still touches
 */
record EliminationOrder(int[] place, int[][] later) {

    private static final int CHECK_EVERY = 1024;

    /** Room for the neighbours of a point to begin with. */
    private static final int FEW = 4;

    /**
     * Finds the order.
     *
     * @param points    count of points
     * @param from      one end of each branch; -1 is the datum
     * @param to        the other end
     * @param cancelled asks to stop
     */
    static EliminationOrder of(int points, int[] from, int[] to, BooleanSupplier cancelled) {
        int[][] neighbours = new int[points][FEW];
        int[] counts = new int[points];
        int[] seen = new int[points];
        for (int branch = 0; branch < from.length; branch++) {
            if (from[branch] >= 0 && to[branch] >= 0 && from[branch] != to[branch]) {
                add(neighbours, counts, from[branch], to[branch]);
                add(neighbours, counts, to[branch], from[branch]);
            }
        }
        for (int point = 0; point < points; point++) {
            once(neighbours, counts, point, seen);
        }
        PriorityQueue<Long> queue = new PriorityQueue<>(Math.max(1, points));
        for (int point = 0; point < points; point++) {
            queue.add(key(counts[point], point));
        }
        int[] place = new int[points];
        Arrays.fill(place, -1);
        int[][] touched = new int[points][];
        Arrays.fill(seen, -1);
        for (int step = 0; step < points; ) {
            long next = queue.remove();
            int point = (int) (next & 0xffffffffL);
            if (place[point] >= 0 || next != key(counts[point], point)) {
                continue; // its neighbours have become others since
            }
            if (step % CHECK_EVERY == 0) {
                Cancelled.check(cancelled);
            }
            place[point] = step;
            touched[step] = Arrays.copyOf(neighbours[point], counts[point]);
            for (int each : touched[step]) {
                int before = counts[each];
                join(neighbours, counts, each, point, touched[step], seen);
                if (counts[each] != before) {
                    queue.add(key(counts[each], each));
                }
            }
            step++;
        }
        for (int[] each : touched) {
            for (int at = 0; at < each.length; at++) {
                each[at] = place[each[at]];
            }
            Arrays.sort(each);
        }
        return new EliminationOrder(place, touched);
    }

    private static void add(int[][] neighbours, int[] counts, int point, int neighbour) {
        if (counts[point] == neighbours[point].length) {
            neighbours[point] = Arrays.copyOf(neighbours[point], 2 * counts[point]);
        }
        neighbours[point][counts[point]++] = neighbour;
    }

    /** Leaves each neighbour once. */
    private static void once(int[][] neighbours, int[] counts, int point, int[] seen) {
        int kept = 0;
        for (int at = 0; at < counts[point]; at++) {
            int neighbour = neighbours[point][at];
            if (seen[neighbour] != point + 1) {
                seen[neighbour] = point + 1;
                neighbours[point][kept++] = neighbour;
            }
        }
        counts[point] = kept;
    }

    /** Takes a point that goes from the neighbours of another and adds those it leaves behind. */
    private static void join(int[][] neighbours, int[] counts, int point, int gone, int[] left, int[] seen) {
        int kept = 0;
        for (int at = 0; at < counts[point]; at++) {
            int neighbour = neighbours[point][at];
            if (neighbour != gone) {
                neighbours[point][kept++] = neighbour;
                seen[neighbour] = point;
            }
        }
        counts[point] = kept;
        for (int neighbour : left) {
            if (neighbour != point && seen[neighbour] != point) {
                add(neighbours, counts, point, neighbour);
            }
        }
        for (int at = 0; at < counts[point]; at++) {
            seen[neighbours[point][at]] = -1;
        }
    }

    private static long key(int count, int point) {
        return ((long) count << 32) | point;
    }
}
