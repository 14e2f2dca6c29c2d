package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
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

    /**
     * Finds the order.
     *
     * @param points    count of points
     * @param from      one end of each branch; -1 is the datum
     * @param to        the other end
     * @param cancelled asks to stop
     */
    static EliminationOrder of(int points, int[] from, int[] to, BooleanSupplier cancelled) {
        List<Set<Integer>> neighbours = neighbours(points, from, to);
        TreeSet<Long> queue = new TreeSet<>();
        for (int point = 0; point < points; point++) {
            queue.add(key(neighbours, point));
        }
        int[] place = new int[points];
        int[][] touched = new int[points][];
        for (int step = 0; step < points; step++) {
            if (step % CHECK_EVERY == 0) {
                Cancelled.check(cancelled);
            }
            int point = (int) (queue.pollFirst() & 0xffffffffL);
            place[point] = step;
            touched[step] =
                    neighbours.get(point).stream().mapToInt(Integer::intValue).toArray();
            remove(point, touched[step], neighbours, queue);
        }
        for (int step = 0; step < points; step++) {
            touched[step] = Arrays.stream(touched[step])
                    .map(point -> place[point])
                    .sorted()
                    .toArray();
        }
        return new EliminationOrder(place, touched);
    }

    private static List<Set<Integer>> neighbours(int points, int[] from, int[] to) {
        List<Set<Integer>> neighbours = new ArrayList<>(points);
        for (int point = 0; point < points; point++) {
            neighbours.add(new HashSet<>());
        }
        for (int branch = 0; branch < from.length; branch++) {
            if (from[branch] >= 0 && to[branch] >= 0) {
                neighbours.get(from[branch]).add(to[branch]);
                neighbours.get(to[branch]).add(from[branch]);
            }
        }
        return neighbours;
    }

    private static void remove(int point, int[] touched, List<Set<Integer>> neighbours, TreeSet<Long> queue) {
        for (int each : touched) {
            queue.remove(key(neighbours, each));
        }
        for (int each : touched) {
            Set<Integer> own = neighbours.get(each);
            own.remove(point);
            for (int other : touched) {
                if (other != each) {
                    own.add(other);
                }
            }
        }
        for (int each : touched) {
            queue.add(key(neighbours, each));
        }
        neighbours.get(point).clear();
    }

    private static long key(List<Set<Integer>> neighbours, int point) {
        return ((long) neighbours.get(point).size() << 32) | point;
    }
}
