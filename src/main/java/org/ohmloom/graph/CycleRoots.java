package org.ohmloom.graph;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * Nodes that every cycle of a multigraph passes one of, in an order that takes it apart.
 *
 * <p>Nodes of fewer than two edges lie on no cycle and go first. Of each part that is left a node is taken out, the one with the
 * most edges where one stands out, otherwise the middle one of a search from the rim, and so on with the parts that remain. A
 * cycle belongs to the first of its nodes that is taken out; looking for it needs only what was there at that time.
 */
final class CycleRoots {
    private static final int NEVER = Integer.MAX_VALUE;
    private static final int HUB_EDGES = 8;

    private final Multigraph graph;
    private final int[] degree;
    private final int[] goneAt;
    private final int[] seen;
    private int searches;
    private final List<Integer> roots = new ArrayList<>();

    private CycleRoots(Multigraph graph) {
        this.graph = graph;
        degree = new int[graph.nodeCount()];
        goneAt = new int[graph.nodeCount()];
        seen = new int[graph.nodeCount()];
        Arrays.fill(goneAt, NEVER);
        for (int node = 0; node < degree.length; node++) {
            degree[node] = graph.at()[node].length;
        }
    }

    /** The roots of a graph without edges from a node to itself. */
    static CycleRoots of(Multigraph graph) {
        CycleRoots roots = new CycleRoots(graph);
        roots.choose();
        return roots;
    }

    /** The nodes in the order they are taken out. */
    List<Integer> all() {
        return roots;
    }

    /** Whether a node is still there when the root of that place is about to be taken out. */
    boolean isThere(int node, int place) {
        return goneAt[node] >= place;
    }

    private void choose() {
        for (int node = 0; node < degree.length; node++) {
            if (goneAt[node] == NEVER && degree[node] < 2) {
                takeOut(node, -1);
            }
        }
        Deque<Integer> starts = new ArrayDeque<>();
        for (int node = 0; node < degree.length; node++) {
            starts.add(node);
            while (!starts.isEmpty()) {
                int start = starts.pop();
                if (goneAt[start] == NEVER) {
                    int root = middle(start);
                    roots.add(root);
                    takeOut(root, roots.size() - 1);
                    for (int edge : graph.at()[root]) {
                        starts.push(graph.across(edge, root));
                    }
                }
            }
        }
    }

    /** Takes a node out, and then all that are left with fewer than two edges. */
    private void takeOut(int node, int place) {
        Deque<Integer> open = new ArrayDeque<>(List.of(node));
        goneAt[node] = place;
        while (!open.isEmpty()) {
            int each = open.pop();
            for (int edge : graph.at()[each]) {
                int other = graph.across(edge, each);
                if (goneAt[other] == NEVER && --degree[other] < 2) {
                    goneAt[other] = place;
                    open.push(other);
                }
            }
        }
    }

    private int middle(int start) {
        List<Integer> part = search(start);
        int hub = start;
        for (int node : part) {
            if (degree[node] > degree[hub]) {
                hub = node;
            }
        }
        if (degree[hub] >= HUB_EDGES) {
            return hub;
        }
        List<Integer> fromRim = search(part.get(part.size() - 1));
        return fromRim.get(fromRim.size() / 2);
    }

    /** The part a node is in, breadth-first. */
    private List<Integer> search(int start) {
        searches++;
        List<Integer> found = new ArrayList<>(List.of(start));
        seen[start] = searches;
        for (int k = 0; k < found.size(); k++) {
            int node = found.get(k);
            for (int edge : graph.at()[node]) {
                int other = graph.across(edge, node);
                if (goneAt[other] == NEVER && seen[other] != searches) {
                    seen[other] = searches;
                    found.add(other);
                }
            }
        }
        return found;
    }
}
