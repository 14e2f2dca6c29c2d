package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ohmloom.graph.Multigraph.Step;

/**
 * Independent cycles of one block, of the least weight altogether.
 *
 * <p>Chains are drawn together first. A candidate is an edge with the shortest ways from one of the {@link CycleRoots} to both its
 * ends, among the nodes that are there when that root is taken out; in order of weight, a candidate stays when it is no sum of
 * those before it. That gives cycles of the least total weight: a cycle B through a root x is the sum, over its edges e, of the
 * closed ways (shortest way from x to e, e, shortest way back), none of which weighs more than B; where such a way doubles a
 * stretch, what is left weighs less than B and the same holds for it. See Horton, SIAM Journal on Computing 16(2), 1987.
 *
 * <p>Candidates are made as needed: those up to a weight, then up to twice that weight, until there are enough. A block of more than
 * {@link #MOST_CYCLES} cycles, or one that takes more than {@link #MOST_WORK} steps, takes the cycles that edges close with one
 * shortest tree instead, the best of {@link #ROOTS} trees: independent and complete, but perhaps not the lightest.
 */
final class CycleBasis {
    static final int MOST_CYCLES = 10_000;
    private static final long MOST_WORK = 2_000_000_000;
    private static final int MOST_CANDIDATES = 2_000_000;
    private static final long NODE_WORK = 50;
    private static final int ROOTS = 8;

    private final ChainGraph chains;
    private final Multigraph graph;
    private final long[] weights;
    private final TreeSearch search;
    private long work;

    private record Candidate(ShortestTree tree, int edge, int fromPlace, int toPlace, long weight) {}

    /**
     * The cycles of a block.
     *
     * @param cycles   steps around each
     * @param lightest whether their weight is certainly the least
     */
    record Cycles(List<List<Step>> cycles, boolean lightest) {}

    private CycleBasis(Multigraph block, long[] blockWeights) {
        chains = ChainGraph.of(block);
        graph = chains.joints();
        weights = chains.weights(blockWeights);
        search = new TreeSearch(graph, weights);
    }

    /**
     * The cycles of a block.
     *
     * @param weights of its edges, more than 0; their sum must fit
     */
    static Cycles of(Multigraph block, long[] weights) {
        CycleBasis basis = new CycleBasis(block, weights);
        if (basis.graph.edgeCount() == 1) {
            return new Cycles(List.of(basis.chains.unfold(List.of(new Step(0, true)))), true);
        }
        int rank = basis.graph.edgeCount() - basis.graph.nodeCount() + 1;
        Optional<List<List<Step>>> lightest = rank <= MOST_CYCLES ? basis.lightest() : Optional.empty();
        List<List<Step>> cycles = lightest.orElseGet(basis::fundamental);
        return new Cycles(cycles.stream().map(basis.chains::unfold).toList(), lightest.isPresent());
    }

    private Optional<List<List<Step>>> lightest() {
        CycleRoots roots = CycleRoots.of(graph);
        CycleSpace space = new CycleSpace(graph);
        List<List<Step>> cycles = new ArrayList<>();
        long[] sorted = weights.clone();
        Arrays.sort(sorted);
        long before = 0;
        long limit = doubled(doubled(sorted[sorted.length / 2]));
        while (before < limit) {
            Optional<List<Candidate>> candidates = candidates(roots, before, limit);
            if (candidates.isEmpty()) {
                return Optional.empty();
            }
            for (Candidate candidate : candidates.get()) {
                List<Step> cycle = candidate.tree.cycle(candidate.edge, candidate.fromPlace, candidate.toPlace);
                if (space.keeps(cycle)) {
                    cycles.add(cycle);
                    if (space.isFull()) {
                        return Optional.of(cycles);
                    }
                }
                if (work + space.work() > MOST_WORK) {
                    return Optional.empty();
                }
            }
            before = limit;
            limit = doubled(limit);
        }
        return Optional.empty();
    }

    private static long doubled(long weight) {
        return weight > Long.MAX_VALUE / 2 ? Long.MAX_VALUE : 2 * weight;
    }

    /** Candidates above one weight up to another, lightest first; empty when there are too many. */
    private Optional<List<Candidate>> candidates(CycleRoots roots, long above, long limit) {
        List<Candidate> candidates = new ArrayList<>();
        for (int k = 0; k < roots.all().size(); k++) {
            int place = k;
            // the farther end of the closing edge is at most half the cycle away
            ShortestTree tree = search.grow(roots.all().get(k), limit / 2, node -> roots.isThere(node, place));
            search.closings((edge, from, to, weight) -> {
                if (weight > above && weight <= limit) {
                    candidates.add(new Candidate(tree, edge, from, to, weight));
                }
            });
            work += NODE_WORK * search.size();
            if (work > MOST_WORK || candidates.size() > MOST_CANDIDATES) {
                return Optional.empty();
            }
        }
        candidates.sort(Comparator.comparingLong(Candidate::weight));
        return Optional.of(candidates);
    }

    private List<List<Step>> fundamental() {
        int root = IntStream.range(0, graph.nodeCount())
                .boxed()
                .sorted(Comparator.comparingInt((Integer node) -> -graph.at()[node].length))
                .limit(ROOTS)
                .min(Comparator.comparingLong(each -> {
                    search.grow(each, Long.MAX_VALUE, node -> true);
                    return search.heaviness();
                }))
                .orElseThrow();
        ShortestTree tree = search.grow(root, Long.MAX_VALUE, node -> true);
        List<List<Step>> cycles = new ArrayList<>();
        for (int edge = 0; edge < graph.edgeCount(); edge++) {
            if (!search.holds(edge)) {
                cycles.add(tree.cycle(edge, search.placeOf(graph.from()[edge]), search.placeOf(graph.to()[edge])));
            }
        }
        return cycles;
    }
}
