package org.ohmloom.graph;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.ohmloom.graph.Multigraph.Step;

/**
 * Finds the loops of the return network: a smallest set of independent cycles, by the count of elements and then by length.
 *
 * <p>A chassis body counts as one node, so a loop wholly inside it is none; where a loop passes a body, the stretches of
 * chassis of the shortest way are put in. Parallel conductors are loops, among them two ground wires from one unit to one
 * splice. A cycle of contacts and joints alone encloses nothing and is left out. There are as many loops as independent
 * cycles, and every other cycle is a sum of them; with any member taken out, its loop is gone.
 *
 * <p>Method: {@link Blocks}, then {@link CycleBasis} in each. An element counts as one; its length follows behind, in whole numbers
 * of a micrometre or more, so that sums are exact and length decides only between cycles of as many elements.
 */
public final class ReturnLoops {
    /** Weight of one element: more than the lengths of all of them together. */
    private static final long ELEMENT = 1L << 40;

    private static final double MICROMETRE = 1e-6;

    private final List<Branch> edges = new ArrayList<>();
    private final Map<PointId, Integer> nodeOf = new HashMap<>();
    private final Multigraph graph;
    private final Adjacency chassis;
    private final long[] weights;
    private boolean shortest = true;

    private ReturnLoops(Network network, ToDoubleFunction<Branch> lengthMetres) {
        ReturnNetwork returns = ReturnNetwork.of(network);
        Islands bodies = Islands.of(
                new Network(network.state(), returns.points(), returns.branches(), network.datum()),
                branch -> branch.kind() == BranchKind.CHASSIS);
        nodeOf.putAll(bodies.numberOf());
        returns.branches().values().stream()
                .filter(branch -> branch.kind() != BranchKind.CHASSIS)
                .forEach(edges::add);
        graph = Multigraph.of(
                bodies.all().size(),
                edges.stream().mapToInt(branch -> nodeOf.get(branch.from())).toArray(),
                edges.stream().mapToInt(branch -> nodeOf.get(branch.to())).toArray());
        chassis = Adjacency.of(
                network,
                branch -> branch.kind() == BranchKind.CHASSIS
                        && returns.branches().containsKey(branch.id()));
        double[] lengths = edges.stream().mapToDouble(lengthMetres).toArray();
        double step = Math.max(MICROMETRE, 2 * Arrays.stream(lengths).sum() / ELEMENT);
        weights = Arrays.stream(lengths)
                .mapToLong(length -> ELEMENT + Math.round(length / step))
                .toArray();
    }

    /** The loops of the fewest elements, whatever their lengths. */
    public static FoundLoops of(Network network) {
        return of(network, branch -> 0);
    }

    /**
     * The loops, in the order of their first members; each starts with its first member in natural order.
     *
     * @param network      the network
     * @param lengthMetres length of a conductor, m, 0 or more; 0 where there is none or it is not known
     */
    public static FoundLoops of(Network network, ToDoubleFunction<Branch> lengthMetres) {
        ReturnLoops search = new ReturnLoops(network, lengthMetres);
        List<ReturnLoop> loops = search.cycles().stream()
                .map(search::walk)
                .filter(ReturnLoops::hasConductor)
                .map(LoopWalk::toLoop)
                .sorted(Comparator.comparing((ReturnLoop loop) -> loop.members().get(0))
                        .thenComparing(loop -> loop.members().size())
                        .thenComparing(loop -> loop.members().get(1)))
                .toList();
        return new FoundLoops(loops, search.shortest);
    }

    private List<List<Step>> cycles() {
        List<List<Step>> cycles = new ArrayList<>();
        for (int edge = 0; edge < graph.edgeCount(); edge++) {
            if (graph.from()[edge] == graph.to()[edge]) {
                cycles.add(List.of(new Step(edge, true)));
            }
        }
        for (List<Integer> block : Blocks.of(graph)) {
            CycleBasis.Cycles found = CycleBasis.of(
                    graph.part(block),
                    block.stream().mapToLong(edge -> weights[edge]).toArray());
            shortest &= found.lightest();
            for (List<Step> cycle : found.cycles()) {
                cycles.add(cycle.stream()
                        .map(step -> new Step(block.get(step.edge()), step.forward()))
                        .toList());
            }
        }
        return cycles;
    }

    /** The branches and points around a cycle, with the stretches of chassis between them. */
    private LoopWalk walk(List<Step> cycle) {
        LoopWalk walk = new LoopWalk();
        for (int k = 0; k < cycle.size(); k++) {
            Branch branch = edges.get(cycle.get(k).edge());
            walk.add(branch, cycle.get(k).forward() ? branch.from() : branch.to());
            Step following = cycle.get((k + 1) % cycle.size());
            Branch next = edges.get(following.edge());
            through(walk.end(), following.forward() ? next.from() : next.to(), walk);
        }
        return walk;
    }

    /** The shortest way through a chassis body between two of its points; nothing when they are one. */
    private void through(PointId from, PointId to, LoopWalk walk) {
        Map<PointId, Branch> onward = new HashMap<>();
        Deque<PointId> open = new ArrayDeque<>(List.of(to));
        while (!from.equals(to) && !onward.containsKey(from)) {
            PointId point = open.remove();
            for (Branch branch : chassis.at(point)) {
                PointId next = Adjacency.across(branch, point);
                if (!next.equals(to) && onward.putIfAbsent(next, branch) == null) {
                    open.add(next);
                }
            }
        }
        PointId point = from;
        while (!point.equals(to)) {
            Branch branch = onward.get(point);
            walk.add(branch, point);
            point = Adjacency.across(branch, point);
        }
    }

    private static boolean hasConductor(LoopWalk walk) {
        return walk.branches().stream().anyMatch(branch -> branch.kind().part() == BranchKind.Part.CONDUCTOR);
    }
}
