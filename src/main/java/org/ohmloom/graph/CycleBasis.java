package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.ohmloom.graph.Multigraph.Step;

/**
 * Independent cycles of one block, as short as they can be.
 *
 * <p>With chains drawn together, every candidate is an edge with the shortest ways from one node to both its ends; sorted
 * by length, a candidate stays when it is no sum of those before it. That gives cycles of the least total length (Horton,
 * SIAM Journal on Computing 16(2), 1987). A block with more than {@link #MOST_CANDIDATES} candidates takes the cycles
 * that edges close with a shortest tree instead, the best of {@link #ROOTS} trees: independent and complete, but perhaps
 * not the shortest.
 */
final class CycleBasis {
    private static final int MOST_CANDIDATES = 100_000;
    private static final int ROOTS = 8;

    private final ChainGraph chains;
    private final Multigraph graph;
    private final int[] weights;
    private final int rank;

    private record Candidate(ShortestTree tree, int edge, int weight) {}

    private CycleBasis(Multigraph block) {
        chains = ChainGraph.of(block);
        graph = chains.joints();
        weights = chains.weights();
        rank = graph.edgeCount() - graph.nodeCount() + 1;
    }

    /** The cycles of a block as steps around each. */
    static List<List<Step>> of(Multigraph block) {
        CycleBasis basis = new CycleBasis(block);
        boolean small = (long) basis.graph.nodeCount() * basis.rank <= MOST_CANDIDATES;
        List<List<Step>> cycles = small ? basis.shortest() : basis.fundamental();
        return cycles.stream().map(basis.chains::unfold).toList();
    }

    private List<List<Step>> shortest() {
        List<Candidate> candidates = new ArrayList<>();
        for (int root = 0; root < graph.nodeCount(); root++) {
            ShortestTree tree = new ShortestTree(graph, weights, root);
            for (int edge = 0; edge < graph.edgeCount(); edge++) {
                if (tree.closesAtRoot(edge)) {
                    candidates.add(new Candidate(tree, edge, tree.reach(edge) + weights[edge]));
                }
            }
        }
        candidates.sort(Comparator.comparingInt(Candidate::weight));
        List<List<Step>> cycles = new ArrayList<>();
        BitSet[] reduced = new BitSet[graph.edgeCount()];
        for (Candidate candidate : candidates) {
            List<Step> cycle = candidate.tree.cycle(candidate.edge);
            if (isIndependent(cycle, reduced)) {
                cycles.add(cycle);
                if (cycles.size() == rank) {
                    break;
                }
            }
        }
        return cycles;
    }

    /** Subtracts the cycles kept so far; keeps what is left, under its first edge, if anything is. */
    private static boolean isIndependent(List<Step> cycle, BitSet[] reduced) {
        BitSet edges = new BitSet();
        cycle.forEach(step -> edges.flip(step.edge()));
        int lead = edges.nextSetBit(0);
        while (lead >= 0 && reduced[lead] != null) {
            edges.xor(reduced[lead]);
            lead = edges.nextSetBit(0);
        }
        if (lead >= 0) {
            reduced[lead] = edges;
        }
        return lead >= 0;
    }

    private List<List<Step>> fundamental() {
        ShortestTree tree = IntStream.range(0, graph.nodeCount())
                .boxed()
                .sorted(Comparator.comparingInt((Integer node) -> -graph.at()[node].length))
                .limit(ROOTS)
                .map(root -> new ShortestTree(graph, weights, root))
                .min(Comparator.comparingLong(this::totalReach))
                .orElseThrow();
        List<List<Step>> cycles = new ArrayList<>();
        for (int edge = 0; edge < graph.edgeCount(); edge++) {
            if (!tree.holds(edge)) {
                cycles.add(tree.cycle(edge));
            }
        }
        return cycles;
    }

    private long totalReach(ShortestTree tree) {
        return IntStream.range(0, graph.edgeCount())
                .filter(edge -> !tree.holds(edge))
                .mapToLong(tree::reach)
                .sum();
    }
}
