package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ohmloom.graph.Multigraph.Step;

/**
 * A block with its chains drawn together: the nodes where three or more edges meet, and the chains of edges between
 * them. A block that is one plain cycle becomes one node and one chain.
 *
 * @param joints the nodes and chains as a multigraph
 * @param chains the steps of each chain through the block
 */
record ChainGraph(Multigraph joints, List<List<Step>> chains) {

    static ChainGraph of(Multigraph block) {
        int[] number = new int[block.nodeCount()];
        Arrays.fill(number, -1);
        int count = 0;
        for (int node = 0; node < number.length; node++) {
            if (block.at()[node].length > 2) {
                number[node] = count++;
            }
        }
        if (count == 0) {
            number[block.from()[0]] = count++;
        }
        List<List<Step>> chains = new ArrayList<>();
        List<int[]> ends = new ArrayList<>();
        boolean[] walked = new boolean[block.edgeCount()];
        for (int node = 0; node < number.length; node++) {
            if (number[node] < 0) {
                continue;
            }
            for (int edge : block.at()[node]) {
                if (!walked[edge]) {
                    List<Step> chain = chain(block, number, walked, block.leaving(edge, node));
                    chains.add(chain);
                    ends.add(new int[] {number[node], number[block.end(chain.get(chain.size() - 1))]});
                }
            }
        }
        int[] from = ends.stream().mapToInt(end -> end[0]).toArray();
        int[] to = ends.stream().mapToInt(end -> end[1]).toArray();
        return new ChainGraph(Multigraph.of(count, from, to), List.copyOf(chains));
    }

    private static List<Step> chain(Multigraph block, int[] number, boolean[] walked, Step first) {
        List<Step> chain = new ArrayList<>();
        Step step = first;
        while (true) {
            chain.add(step);
            walked[step.edge()] = true;
            int node = block.end(step);
            if (number[node] >= 0) {
                return chain;
            }
            int[] at = block.at()[node];
            step = block.leaving(at[0] == step.edge() ? at[1] : at[0], node);
        }
    }

    /** Weight of each chain, given the weights of the block's edges. */
    long[] weights(long[] ofEdges) {
        return chains.stream()
                .mapToLong(chain ->
                        chain.stream().mapToLong(step -> ofEdges[step.edge()]).sum())
                .toArray();
    }

    /** A cycle of chains as steps through the block. */
    List<Step> unfold(List<Step> cycle) {
        List<Step> steps = new ArrayList<>();
        for (Step step : cycle) {
            List<Step> chain = chains.get(step.edge());
            if (step.forward()) {
                steps.addAll(chain);
            } else {
                for (int k = chain.size() - 1; k >= 0; k--) {
                    steps.add(chain.get(k).turned());
                }
            }
        }
        return steps;
    }
}
