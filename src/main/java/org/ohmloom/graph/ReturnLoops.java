package org.ohmloom.graph;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.graph.Multigraph.Step;

/**
 * Finds the loops of the return network: independent cycles of the fewest elements.
 *
 * <p>A chassis body counts as one node, so a loop wholly inside it is none; where a loop passes a body, the stretches of
 * chassis of the shortest way are put in. Parallel conductors are loops, among them two ground wires from one unit to one
 * splice. A cycle of contacts and joints alone encloses nothing and is left out. There are as many loops as independent
 * cycles, and every other cycle is a sum of them.
 *
 * <p>Method: {@link Blocks}, then {@link CycleBasis} in each; linear in the conductors, and about quadratic in the loops
 * of one block.
 */
public final class ReturnLoops {
    private final List<Branch> edges = new ArrayList<>();
    private final Map<PointId, Integer> nodeOf = new HashMap<>();
    private final Multigraph graph;
    private final Adjacency chassis;

    private ReturnLoops(Network network) {
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
    }

    /** The loops, in the order of their first members; each starts with its first member in natural order. */
    public static List<ReturnLoop> of(Network network) {
        ReturnLoops search = new ReturnLoops(network);
        return search.cycles().stream()
                .map(search::walk)
                .filter(ReturnLoops::hasConductor)
                .map(LoopWalk::toLoop)
                .sorted(Comparator.comparing((ReturnLoop loop) -> loop.members().get(0))
                        .thenComparing(loop -> loop.members().size())
                        .thenComparing(loop -> loop.members().get(1)))
                .toList();
    }

    private List<List<Step>> cycles() {
        List<List<Step>> cycles = new ArrayList<>();
        for (int edge = 0; edge < graph.edgeCount(); edge++) {
            if (graph.from()[edge] == graph.to()[edge]) {
                cycles.add(List.of(new Step(edge, true)));
            }
        }
        for (List<Integer> block : Blocks.of(graph)) {
            for (List<Step> cycle : CycleBasis.of(graph.part(block))) {
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
