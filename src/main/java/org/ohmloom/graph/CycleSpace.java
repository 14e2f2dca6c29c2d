package org.ohmloom.graph;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.ohmloom.graph.Multigraph.Step;

/**
 * Tells whether cycles are independent: none a sum, over the two-element field, of the others.
 *
 * <p>A cycle is known by its edges outside a spanning tree; as many of these as independent cycles. Elimination keeps what is left
 * of each cycle under its first such edge.
 */
final class CycleSpace {
    private final int[] numberOf;
    private final int rank;
    private final long[][] kept;
    private int count;
    private long work;

    CycleSpace(Multigraph graph) {
        numberOf = new int[graph.edgeCount()];
        boolean[] seen = new boolean[graph.nodeCount()];
        boolean[] inTree = new boolean[graph.edgeCount()];
        Deque<Integer> open = new ArrayDeque<>(List.of(0));
        seen[0] = true;
        while (!open.isEmpty()) {
            int node = open.remove();
            for (int edge : graph.at()[node]) {
                int other = graph.across(edge, node);
                if (!seen[other]) {
                    seen[other] = true;
                    inTree[edge] = true;
                    open.add(other);
                }
            }
        }
        int next = 0;
        for (int edge = 0; edge < numberOf.length; edge++) {
            numberOf[edge] = inTree[edge] ? -1 : next++;
        }
        rank = next;
        kept = new long[rank][];
    }

    /** How many independent cycles there are. */
    int rank() {
        return rank;
    }

    /** Whether as many are kept. */
    boolean isFull() {
        return count == rank;
    }

    /** Words of bits added so far. */
    long work() {
        return work;
    }

    /** Keeps a cycle unless it is a sum of those kept before; says whether it did. */
    boolean keeps(List<Step> cycle) {
        long[] left = new long[(rank + 63) / 64];
        for (Step step : cycle) {
            int number = numberOf[step.edge()];
            if (number >= 0) {
                left[number / 64] ^= 1L << number;
            }
        }
        int word = 0;
        while (word < left.length) {
            if (left[word] == 0) {
                word++;
                continue;
            }
            int lead = 64 * word + Long.numberOfTrailingZeros(left[word]);
            if (kept[lead] == null) {
                kept[lead] = left;
                count++;
                return true;
            }
            for (int k = word; k < left.length; k++) {
                left[k] ^= kept[lead][k];
            }
            work += left.length - word;
        }
        return false;
    }
}
