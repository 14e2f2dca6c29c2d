package org.ohmloom.draw.flow;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.ohmloom.draw.flow.FlowNode.Role;
import org.ohmloom.draw.study.Named;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.Solution;

/**
 * The electrical network told in terms of what a person sees: nodes, and ways between them that have no fork. Points with two
 * conductors are left out, dead ends as well; what is one component is one node, but the two poles of a source are two.
 */
final class FlowGraph {

    private static final Set<SignalClass> BACK =
            Set.of(SignalClass.RETURN, SignalClass.REFERENCE_RETURN, SignalClass.SHIELD);

    private final Harness harness;
    private final Map<String, FlowNode> nodes = new LinkedHashMap<>();
    private final Map<PointId, FlowNode> at = new HashMap<>();
    private final List<FlowEdge> edges = new ArrayList<>();
    private final Map<PointId, List<Branch>> plain = new TreeMap<>();

    private FlowGraph(Harness harness) {
        this.harness = harness;
    }

    /**
     * The graph of a harness.
     *
     * @param drawn     its network with nothing switched on
     * @param solutions solutions of all states, which give each way its direction
     */
    static FlowGraph of(Harness harness, Network drawn, Collection<Solution> solutions) {
        FlowGraph graph = new FlowGraph(harness);
        drawn.all().stream()
                .filter(branch -> branch.kind() == BranchKind.SOURCE)
                .forEach(graph::source);
        drawn.all().stream().filter(branch -> !branch.isPlain()).forEach(graph::device);
        drawn.all().stream().filter(Branch::isPlain).forEach(graph::place);
        graph.forks();
        graph.walk(solutions);
        return graph;
    }

    List<FlowNode> nodes() {
        return List.copyOf(nodes.values());
    }

    List<FlowEdge> edges() {
        return List.copyOf(edges);
    }

    /** The points of a node. */
    Set<PointId> points(FlowNode node) {
        Set<PointId> points = new HashSet<>();
        at.forEach((point, there) -> {
            if (there.equals(node)) {
                points.add(point);
            }
        });
        return points;
    }

    private FlowNode node(String key, Optional<ElementId> element, Role role) {
        return nodes.computeIfAbsent(
                key,
                id -> new FlowNode(
                        key,
                        element,
                        element.map(each -> Named.name(harness, each)).orElse(""),
                        role));
    }

    private void source(Branch branch) {
        String id = branch.element().map(ElementId::value).orElse(branch.id().value());
        at.computeIfAbsent(branch.to(), point -> node(id + " +", branch.element(), Role.SOURCE));
        at.computeIfAbsent(branch.from(), point -> node(id + " −", branch.element(), Role.SINK));
    }

    private void device(Branch branch) {
        String id = branch.element().map(ElementId::value).orElse(branch.id().value());
        for (PointId point : List.of(branch.from(), branch.to())) {
            if (!at.containsKey(point)) {
                at.put(point, node(id, branch.element(), role(branch)));
            }
        }
    }

    private Role role(Branch branch) {
        boolean load = branch.element()
                .filter(ComponentId.class::isInstance)
                .flatMap(id -> harness.components().find((ComponentId) id))
                .map(Component::device)
                .filter(device -> device instanceof Load || device instanceof Sensor)
                .isPresent();
        return load ? Role.LOAD : Role.DEVICE;
    }

    /** Splices, bus bars, ground points and bodies are nodes however few conductors meet there. */
    private void place(Branch branch) {
        boolean inside = branch.kind() == BranchKind.CHASSIS || branch.kind() == BranchKind.INTERNAL;
        if (inside) {
            for (PointId point : List.of(branch.from(), branch.to())) {
                at.computeIfAbsent(
                        point,
                        each -> branch.kind() == BranchKind.CHASSIS
                                ? node(name(branch), branch.element(), Role.GROUND)
                                : node(name(branch), branch.element(), Role.DEVICE));
            }
            return;
        }
        plain.computeIfAbsent(branch.from(), point -> new ArrayList<>()).add(branch);
        plain.computeIfAbsent(branch.to(), point -> new ArrayList<>()).add(branch);
        if (branch.kind() == BranchKind.JOINT) {
            Role role =
                    branch.element().filter(GroundPointId.class::isInstance).isPresent() ? Role.GROUND : Role.JUNCTION;
            for (PointId point : List.of(branch.from(), branch.to())) {
                if (point.value().equals(name(branch))) {
                    at.computeIfAbsent(point, each -> node(name(branch), branch.element(), role));
                }
            }
        }
    }

    private static String name(Branch branch) {
        return branch.element().map(ElementId::value).orElse(branch.id().value());
    }

    private void forks() {
        plain.forEach((point, branches) -> {
            if (branches.size() > 2) {
                at.computeIfAbsent(point, each -> node(point.value(), Optional.empty(), Role.JUNCTION));
            }
        });
    }

    private void walk(Collection<Solution> solutions) {
        Set<Branch> seen = new HashSet<>();
        plain.forEach((start, branches) -> {
            if (at.containsKey(start)) {
                for (Branch first : branches) {
                    if (!seen.contains(first)) {
                        way(start, first, seen).ifPresent(edge -> edges.add(directed(edge, solutions)));
                    }
                }
            }
        });
    }

    private Optional<FlowEdge> way(PointId start, Branch first, Set<Branch> seen) {
        List<FlowEdge.Step> steps = new ArrayList<>();
        PointId here = start;
        Branch next = first;
        while (true) {
            seen.add(next);
            FlowEdge.Step step = new FlowEdge.Step(next, next.from().equals(here));
            steps.add(step);
            here = step.end();
            if (at.containsKey(here)) {
                boolean round = at.get(here).equals(at.get(start));
                return round
                        ? Optional.empty()
                        : Optional.of(new FlowEdge(at.get(start), at.get(here), start, here, steps));
            }
            Branch last = next;
            Optional<Branch> onward = plain.get(here).stream()
                    .filter(branch -> branch != last && !seen.contains(branch))
                    .findFirst();
            if (onward.isEmpty()) {
                return Optional.empty();
            }
            next = onward.get();
        }
    }

    /**
     * The way as it is drawn: away from the positive pole of a source and towards its negative one, be it that a battery is charged;
     * otherwise with the largest current it ever carries; without any, as wires of its class run.
     */
    private FlowEdge directed(FlowEdge edge, Collection<Solution> solutions) {
        boolean leaves = edge.to().role() == Role.SOURCE || edge.from().role() == Role.SINK;
        boolean arrives = edge.from().role() == Role.SOURCE || edge.to().role() == Role.SINK;
        if (leaves != arrives) {
            return leaves ? edge.reversed() : edge;
        }
        double most = 0;
        for (Solution solution : solutions) {
            double amps = edge.amps(solution);
            if (Math.abs(amps) > Math.abs(most)) {
                most = amps;
            }
        }
        boolean turned = most == 0
                ? isBack(edge) ? rank(edge.from()) > rank(edge.to()) : rank(edge.from()) >= rank(edge.to())
                : most < 0;
        return turned ? edge.reversed() : edge;
    }

    private boolean isBack(FlowEdge edge) {
        return edge.lead()
                .branch()
                .element()
                .filter(WireId.class::isInstance)
                .flatMap(id -> harness.wires().find((WireId) id))
                .filter(wire -> BACK.contains(wire.signalClass()))
                .isPresent();
    }

    private static int rank(FlowNode node) {
        return switch (node.role()) {
            case SOURCE -> 0;
            case JUNCTION -> 1;
            case DEVICE -> 2;
            case LOAD -> 3;
            case GROUND -> 4;
            case SINK -> 5;
        };
    }
}
