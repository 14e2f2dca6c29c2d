package org.ohmloom.graph;

import java.util.Arrays;
import java.util.PriorityQueue;
import java.util.function.IntPredicate;

/** Grows shortest trees in one multigraph, one after the other, in arrays that they share. */
final class TreeSearch {
    private static final int NONE = -1;

    private final Multigraph graph;
    private final long[] weights;
    private final int[] place;
    private int[] nodes = new int[16];
    private int[] parents = new int[16];
    private int[] entries = new int[16];
    private int[] trunks = new int[16];
    private long[] distances = new long[16];
    private boolean[] settled = new boolean[16];
    private int count;

    private record Reached(long distance, int place) implements Comparable<Reached> {
        @Override
        public int compareTo(Reached other) {
            int byDistance = Long.compare(distance, other.distance);
            return byDistance != 0 ? byDistance : Integer.compare(place, other.place);
        }
    }

    /** Told of an edge that closes a cycle through the root: its ends' places, and the weight of the cycle. */
    interface Closing {
        void at(int edge, int fromPlace, int toPlace, long weight);
    }

    /**
     * Prepares for searches.
     *
     * @param weights of the edges, more than 0
     */
    TreeSearch(Multigraph graph, long[] weights) {
        this.graph = graph;
        this.weights = weights;
        place = new int[graph.nodeCount()];
        Arrays.fill(place, NONE);
    }

    /** Grows the tree of a root out to a distance, over the nodes that are there. */
    ShortestTree grow(int root, long farthest, IntPredicate isThere) {
        for (int k = 0; k < count; k++) {
            place[nodes[k]] = NONE;
        }
        count = 0;
        PriorityQueue<Reached> open = new PriorityQueue<>();
        reach(root, NONE, NONE, 0);
        open.add(new Reached(0, 0));
        while (!open.isEmpty()) {
            int at = open.remove().place();
            if (settled[at]) {
                continue;
            }
            settled[at] = true;
            int node = nodes[at];
            for (int edge : graph.at()[node]) {
                int other = graph.across(edge, node);
                long distance = distances[at] + weights[edge];
                boolean nearer = place[other] == NONE || distance < distances[place[other]];
                if (nearer && distance <= farthest && isThere.test(other)) {
                    reach(other, at, edge, distance);
                    open.add(new Reached(distance, place[other]));
                }
            }
        }
        return new ShortestTree(
                graph, Arrays.copyOf(nodes, count), Arrays.copyOf(parents, count), Arrays.copyOf(entries, count));
    }

    private void reach(int node, int parent, int entry, long distance) {
        if (place[node] == NONE) {
            if (count == nodes.length) {
                widen();
            }
            place[node] = count;
            nodes[count] = node;
            settled[count] = false;
            count++;
        }
        int at = place[node];
        parents[at] = parent;
        entries[at] = entry;
        distances[at] = distance;
        trunks[at] = parent <= 0 ? at : trunks[parent];
    }

    private void widen() {
        nodes = Arrays.copyOf(nodes, 2 * count);
        parents = Arrays.copyOf(parents, 2 * count);
        entries = Arrays.copyOf(entries, 2 * count);
        trunks = Arrays.copyOf(trunks, 2 * count);
        distances = Arrays.copyOf(distances, 2 * count);
        settled = Arrays.copyOf(settled, 2 * count);
    }

    /** Nodes the last tree has. */
    int size() {
        return count;
    }

    /** Tells of every edge that closes a cycle through the root with the last tree. */
    void closings(Closing told) {
        for (int at = 0; at < count; at++) {
            for (int edge : graph.at()[nodes[at]]) {
                boolean first = graph.from()[edge] == nodes[at];
                int to = first ? place[graph.to()[edge]] : NONE;
                if (to != NONE && entries[at] != edge && entries[to] != edge && trunks[at] != trunks[to]) {
                    told.at(edge, at, to, distances[at] + weights[edge] + distances[to]);
                }
            }
        }
    }

    /** Weight of all ways of the last tree and of every edge outside it, together: how heavy its cycles are. */
    long heaviness() {
        long sum = 0;
        for (int at = 0; at < count; at++) {
            for (int edge : graph.at()[nodes[at]]) {
                int to = graph.from()[edge] == nodes[at] ? place[graph.to()[edge]] : NONE;
                if (to != NONE && entries[at] != edge && entries[to] != edge) {
                    sum += (distances[at] + distances[to]) >> 20;
                }
            }
        }
        return sum;
    }

    /** Place of a node in the last tree. */
    int placeOf(int node) {
        return place[node];
    }

    /** Whether the edge is part of the last tree. */
    boolean holds(int edge) {
        int from = place[graph.from()[edge]];
        int to = place[graph.to()[edge]];
        return entries[from] == edge || entries[to] == edge;
    }
}
