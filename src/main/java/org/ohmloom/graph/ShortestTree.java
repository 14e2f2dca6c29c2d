package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ohmloom.graph.Multigraph.Step;

/**
 * The shortest ways from one node of a multigraph to the others near it, as a tree. Nodes have places in the order they were
 * reached; the root has place 0.
 */
final class ShortestTree {
    private final Multigraph graph;
    private final int[] nodes;
    private final int[] parents;
    private final int[] entries;

    ShortestTree(Multigraph graph, int[] nodes, int[] parents, int[] entries) {
        this.graph = graph;
        this.nodes = nodes;
        this.parents = parents;
        this.entries = entries;
    }

    /** The cycle that an edge outside the tree closes with it; the ways that both its ends share are left out. */
    List<Step> cycle(int edge, int fromPlace, int toPlace) {
        List<Step> there = way(fromPlace);
        List<Step> back = way(toPlace);
        int shared = 0;
        while (shared < there.size()
                && shared < back.size()
                && there.get(shared).equals(back.get(shared))) {
            shared++;
        }
        List<Step> cycle = new ArrayList<>(there.subList(shared, there.size()));
        cycle.add(new Step(edge, true));
        for (int k = back.size() - 1; k >= shared; k--) {
            cycle.add(back.get(k).turned());
        }
        return cycle;
    }

    /** The steps from the root to a place. */
    private List<Step> way(int place) {
        List<Step> steps = new ArrayList<>();
        for (int each = place; each != 0; each = parents[each]) {
            steps.add(graph.leaving(entries[each], nodes[parents[each]]));
        }
        Collections.reverse(steps);
        return steps;
    }
}
