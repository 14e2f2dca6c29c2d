package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.ohmloom.graph.Multigraph.Step;

/** The shortest ways from one node of a multigraph to every other, as a tree. */
final class ShortestTree {
    private final Multigraph graph;
    private final int root;
    private final int[] distance;
    private final int[] entry;
    private final int[] trunk;

    /**
     * Searches from a root.
     *
     * @param weights length of each edge, more than 0
     */
    ShortestTree(Multigraph graph, int[] weights, int root) {
        this.graph = graph;
        this.root = root;
        distance = new int[graph.nodeCount()];
        entry = new int[graph.nodeCount()];
        trunk = new int[graph.nodeCount()];
        Arrays.fill(distance, Integer.MAX_VALUE);
        Arrays.fill(entry, -1);
        distance[root] = 0;
        trunk[root] = root;
        PriorityQueue<int[]> open = new PriorityQueue<>(
                Comparator.<int[]>comparingInt(each -> each[0]).thenComparingInt(each -> each[1]));
        open.add(new int[] {0, root});
        while (!open.isEmpty()) {
            int[] nearest = open.remove();
            int node = nearest[1];
            if (nearest[0] > distance[node]) {
                continue;
            }
            for (int edge : graph.at()[node]) {
                int other = graph.across(edge, node);
                if (distance[node] + weights[edge] < distance[other]) {
                    distance[other] = distance[node] + weights[edge];
                    entry[other] = edge;
                    trunk[other] = node == root ? other : trunk[node];
                    open.add(new int[] {distance[other], other});
                }
            }
        }
    }

    /** Whether the edge is part of the tree. */
    boolean holds(int edge) {
        return entry[graph.from()[edge]] == edge || entry[graph.to()[edge]] == edge;
    }

    /** Whether the edge closes a cycle with the tree that passes the root. */
    boolean closesAtRoot(int edge) {
        int from = graph.from()[edge];
        int to = graph.to()[edge];
        return !holds(edge) && (from == root || to == root || trunk[from] != trunk[to]);
    }

    /** Length of both ways from the root to the ends of the edge together. */
    int reach(int edge) {
        return distance[graph.from()[edge]] + distance[graph.to()[edge]];
    }

    /** The cycle that an edge outside the tree closes with it; the ways that both its ends share are left out. */
    List<Step> cycle(int edge) {
        List<Step> there = way(graph.from()[edge]);
        List<Step> back = way(graph.to()[edge]);
        int shared = 0;
        while (shared < there.size()
                && shared < back.size()
                && there.get(shared).equals(back.get(shared))) {
            shared++;
        }
        List<Step> cycle = new ArrayList<>(there.subList(shared, there.size()));
        cycle.add(new Step(edge, true));
        for (int k = back.size() - 1; k >= shared; k--) {
            cycle.add(back.get(k).turned());
        }
        return cycle;
    }

    /** The steps from the root to a node. */
    private List<Step> way(int node) {
        List<Step> steps = new ArrayList<>();
        int each = node;
        while (each != root) {
            Step back = graph.leaving(entry[each], each);
            steps.add(back.turned());
            each = graph.end(back);
        }
        Collections.reverse(steps);
        return steps;
    }
}
