package org.ohmloom.graph;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A multigraph of numbered nodes and edges in arrays, for searches over tens of thousands of them.
 *
 * @param nodeCount nodes 0 to nodeCount - 1
 * @param from      one end of each edge
 * @param to        the other end
 * @param at        edges at each node; an edge from a node to itself stands there once
 */
record Multigraph(int nodeCount, int[] from, int[] to, int[][] at) {

    /**
     * One edge walked along a cycle.
     *
     * @param edge    number of the edge
     * @param forward whether it is walked from {@code from} to {@code to}
     */
    record Step(int edge, boolean forward) {

        Step turned() {
            return new Step(edge, !forward);
        }
    }

    static Multigraph of(int nodeCount, int[] from, int[] to) {
        int[] degrees = new int[nodeCount];
        for (int e = 0; e < from.length; e++) {
            degrees[from[e]]++;
            if (to[e] != from[e]) {
                degrees[to[e]]++;
            }
        }
        int[][] at = new int[nodeCount][];
        for (int v = 0; v < nodeCount; v++) {
            at[v] = new int[degrees[v]];
        }
        for (int e = from.length - 1; e >= 0; e--) {
            at[from[e]][--degrees[from[e]]] = e;
            if (to[e] != from[e]) {
                at[to[e]][--degrees[to[e]]] = e;
            }
        }
        return new Multigraph(nodeCount, from, to, at);
    }

    int edgeCount() {
        return from.length;
    }

    int across(int edge, int node) {
        return from[edge] == node ? to[edge] : from[edge];
    }

    /** The edge walked away from a node. */
    Step leaving(int edge, int node) {
        return new Step(edge, from[edge] == node);
    }

    /** The node a step starts at. */
    int start(Step step) {
        return step.forward() ? from[step.edge()] : to[step.edge()];
    }

    /** The node a step ends at. */
    int end(Step step) {
        return step.forward() ? to[step.edge()] : from[step.edge()];
    }

    /** The graph of some edges only, with its nodes numbered anew; edge k of it is {@code edges.get(k)}. */
    Multigraph part(List<Integer> edges) {
        Map<Integer, Integer> numbers = new HashMap<>();
        int[] partFrom = new int[edges.size()];
        int[] partTo = new int[edges.size()];
        for (int k = 0; k < partFrom.length; k++) {
            partFrom[k] = numbers.computeIfAbsent(from[edges.get(k)], node -> numbers.size());
            partTo[k] = numbers.computeIfAbsent(to[edges.get(k)], node -> numbers.size());
        }
        return of(numbers.size(), partFrom, partTo);
    }
}
