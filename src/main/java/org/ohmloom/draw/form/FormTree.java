package org.ohmloom.draw.form;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.List;

/**
 * One piece of a harness as a tree of runs.
 *
 * @param nodes its nodes
 * @param runs  its runs, one fewer than nodes; they name the nodes by their place in the list
 */
record FormTree(List<FormNode> nodes, List<FormRun> runs) {

    FormTree {
        nodes = List.copyOf(nodes);
        runs = List.copyOf(runs);
    }

    /** Numbers of the runs at each node. */
    List<List<Integer>> runsAt() {
        List<List<Integer>> at = new ArrayList<>();
        nodes.forEach(node -> at.add(new ArrayList<>()));
        for (int k = 0; k < runs.size(); k++) {
            at.get(runs.get(k).from()).add(k);
            at.get(runs.get(k).to()).add(k);
        }
        return at;
    }

    /** Numbers of the runs of the longest way through the tree, in order; empty without runs. */
    List<Integer> trunk() {
        if (runs.isEmpty()) {
            return List.of();
        }
        List<List<Integer>> at = runsAt();
        int start = farthest(0, at, new int[nodes.size()]);
        int[] back = new int[nodes.size()];
        int end = farthest(start, at, back);
        List<Integer> trunk = new ArrayList<>();
        for (int node = end; node != start; node = runs.get(back[node]).other(node)) {
            trunk.add(back[node]);
        }
        Collections.reverse(trunk);
        return trunk;
    }

    /** The node farthest from one; notes by which run each node is reached. */
    private int farthest(int start, List<List<Integer>> at, int[] back) {
        double[] far = new double[nodes.size()];
        Arrays.fill(far, -1);
        far[start] = 0;
        Deque<Integer> waiting = new ArrayDeque<>(List.of(start));
        int best = start;
        while (!waiting.isEmpty()) {
            int node = waiting.remove();
            for (int run : at.get(node)) {
                int next = runs.get(run).other(node);
                if (far[next] < 0) {
                    far[next] = far[node]
                            + (runs.get(run).leader() ? 0 : runs.get(run).lengthMm());
                    back[next] = run;
                    waiting.add(next);
                    best = far[next] > far[best] ? next : best;
                }
            }
        }
        return best;
    }

    /** Length of everything beyond each run as seen from a root, the run itself counted, mm. */
    double[] weights(int root) {
        List<List<Integer>> at = runsAt();
        int[] back = new int[nodes.size()];
        Arrays.fill(back, -1);
        List<Integer> order = new ArrayList<>(List.of(root));
        for (int k = 0; k < order.size(); k++) {
            int node = order.get(k);
            for (int run : at.get(node)) {
                if (run != back[node]) {
                    int next = runs.get(run).other(node);
                    back[next] = run;
                    order.add(next);
                }
            }
        }
        double[] weights = new double[runs.size()];
        for (int k = order.size() - 1; k > 0; k--) {
            int node = order.get(k);
            double sum = runs.get(back[node]).lengthMm();
            for (int run : at.get(node)) {
                sum += run == back[node] ? 0 : weights[run];
            }
            weights[back[node]] = sum;
        }
        return weights;
    }
}
