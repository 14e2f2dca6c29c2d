package org.ohmloom.draw.flow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The column of every node: sources first, what they feed after them by the longest way, loads that hang on no other load all in
 * one column, returns as far to the right as they may. A way that would run in a circle counts for nothing.
 */
final class FlowRanks {

    private final List<FlowNode> nodes;
    private final Map<FlowNode, List<FlowEdge>> out = new HashMap<>();
    private final Map<FlowNode, List<FlowEdge>> in = new HashMap<>();
    private final Map<FlowNode, Integer> columns = new HashMap<>();
    private final List<FlowNode> order = new ArrayList<>();

    FlowRanks(FlowGraph graph) {
        nodes = graph.nodes();
        nodes.forEach(node -> {
            out.put(node, new ArrayList<>());
            in.put(node, new ArrayList<>());
            columns.put(node, 0);
        });
        Set<FlowEdge> circular = circular(graph.edges());
        for (FlowEdge edge : graph.edges()) {
            if (!circular.contains(edge)) {
                out.get(edge.from()).add(edge);
                in.get(edge.to()).add(edge);
            }
        }
        sort();
        push();
        lineUpLoads();
        push();
        pullReturns();
    }

    int column(FlowNode node) {
        return columns.get(node);
    }

    /** Ways back to a node that is still being followed, found depth first with a stack of our own. */
    private Set<FlowEdge> circular(List<FlowEdge> edges) {
        Map<FlowNode, List<FlowEdge>> all = new HashMap<>();
        edges.forEach(edge ->
                all.computeIfAbsent(edge.from(), each -> new ArrayList<>()).add(edge));
        Set<FlowEdge> circular = new HashSet<>();
        Set<FlowNode> done = new HashSet<>();
        Set<FlowNode> open = new HashSet<>();
        List<FlowNode> starts = new ArrayList<>(nodes);
        starts.sort(Comparator.comparing(FlowNode::role));
        for (FlowNode start : starts) {
            List<FlowNode> way = new ArrayList<>(List.of(start));
            Map<FlowNode, Integer> next = new HashMap<>();
            if (done.contains(start)) {
                continue;
            }
            open.add(start);
            while (!way.isEmpty()) {
                FlowNode here = way.get(way.size() - 1);
                List<FlowEdge> onward = all.getOrDefault(here, List.of());
                int k = next.merge(here, 1, Integer::sum) - 1;
                if (k >= onward.size()) {
                    open.remove(here);
                    done.add(here);
                    way.remove(way.size() - 1);
                } else if (open.contains(onward.get(k).to())) {
                    circular.add(onward.get(k));
                } else if (!done.contains(onward.get(k).to())) {
                    open.add(onward.get(k).to());
                    way.add(onward.get(k).to());
                }
            }
        }
        return circular;
    }

    private void sort() {
        Map<FlowNode, Integer> waiting = new HashMap<>();
        nodes.forEach(node -> waiting.put(node, in.get(node).size()));
        nodes.stream().filter(node -> waiting.get(node) == 0).forEach(order::add);
        for (int k = 0; k < order.size(); k++) {
            for (FlowEdge edge : out.get(order.get(k))) {
                if (waiting.merge(edge.to(), -1, Integer::sum) == 0) {
                    order.add(edge.to());
                }
            }
        }
    }

    private void push() {
        for (FlowNode node : order) {
            for (FlowEdge edge : out.get(node)) {
                columns.merge(edge.to(), column(node) + 1, Math::max);
            }
        }
    }

    private void lineUpLoads() {
        Set<FlowNode> behind = new HashSet<>();
        int middle = 0;
        for (FlowNode node : order) {
            boolean after = in.get(node).stream()
                    .anyMatch(
                            edge -> behind.contains(edge.from()) || edge.from().role() == FlowNode.Role.LOAD);
            if (after) {
                behind.add(node);
            } else if (node.role() == FlowNode.Role.LOAD) {
                middle = Math.max(middle, column(node));
            }
        }
        for (FlowNode node : order) {
            if (node.role() == FlowNode.Role.LOAD && !behind.contains(node)) {
                columns.put(node, middle);
            }
        }
    }

    private void pullReturns() {
        int last = columns.values().stream().mapToInt(Integer::intValue).max().orElse(0);
        for (int k = order.size() - 1; k >= 0; k--) {
            FlowNode node = order.get(k);
            if (node.role() == FlowNode.Role.SINK) {
                columns.put(node, out.get(node).isEmpty() ? last : column(node));
            } else if (node.role() == FlowNode.Role.GROUND) {
                columns.put(
                        node,
                        out.get(node).stream()
                                .mapToInt(edge -> column(edge.to()) - 1)
                                .min()
                                .orElse(last));
            }
        }
    }
}
