package org.ohmloom.graph;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * Splits a multigraph into its blocks: parts that no single node holds together. Every cycle lies in one block.
 *
 * <p>Depth-first with explicit stacks, so a chain of any length is safe; O(nodes + edges). Two edges between the same
 * nodes are a block of their own kind: the way back is known by its edge, not by its node. See Hopcroft and Tarjan,
 * Communications of the ACM 16(6), 1973.
 */
final class Blocks {
    private final Multigraph graph;
    private final int[] order;
    private final int[] low;
    private final int[] next;
    private final int[] entry;
    private final Deque<Integer> open = new ArrayDeque<>();
    private final Deque<Integer> edges = new ArrayDeque<>();
    private final List<List<Integer>> found = new ArrayList<>();
    private int visited;

    private Blocks(Multigraph graph) {
        this.graph = graph;
        order = new int[graph.nodeCount()];
        low = new int[graph.nodeCount()];
        next = new int[graph.nodeCount()];
        entry = new int[graph.nodeCount()];
        Arrays.fill(order, -1);
    }

    /** Edges of each block of two or more edges, in order; edges from a node to itself are left out. */
    static List<List<Integer>> of(Multigraph graph) {
        Blocks blocks = new Blocks(graph);
        for (int root = 0; root < graph.nodeCount(); root++) {
            if (blocks.order[root] < 0) {
                blocks.search(root);
            }
        }
        return blocks.found;
    }

    private void search(int root) {
        enter(root, -1);
        while (!open.isEmpty()) {
            int node = open.peek();
            if (next[node] < graph.at()[node].length) {
                walk(node, graph.at()[node][next[node]++]);
            } else {
                open.pop();
                leave(node);
            }
        }
    }

    private void enter(int node, int edge) {
        order[node] = visited;
        low[node] = visited++;
        entry[node] = edge;
        open.push(node);
    }

    private void walk(int node, int edge) {
        int other = graph.across(edge, node);
        if (edge == entry[node] || other == node) {
            return;
        }
        if (order[other] < 0) {
            edges.push(edge);
            enter(other, edge);
        } else if (order[other] < order[node]) {
            edges.push(edge);
            low[node] = Math.min(low[node], order[other]);
        }
    }

    private void leave(int node) {
        if (entry[node] < 0) {
            return;
        }
        int parent = graph.across(entry[node], node);
        low[parent] = Math.min(low[parent], low[node]);
        if (low[node] >= order[parent]) {
            List<Integer> block = new ArrayList<>();
            int edge;
            do {
                edge = edges.pop();
                block.add(edge);
            } while (edge != entry[node]);
            if (block.size() > 1) {
                block.sort(null);
                found.add(block);
            }
        }
    }
}
