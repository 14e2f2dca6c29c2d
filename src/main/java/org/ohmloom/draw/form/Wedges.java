package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

/**
 * A tree with every run straight, as large as it comes: each branch gets a sector of directions of its own, as wide as it has ends.
 * Whatever lies beyond a node lies in the cone of its sector, and cones of sectors side by side do not meet, so no runs cross,
 * however long they are (as for trees of descent drawn to scale; from memory). A card that has no room at its end lies further out.
 */
final class Wedges {

    private static final double WIDEST_DEGREES = 170;

    private final FormTree tree;
    private final List<List<Integer>> runsAt;
    private final Way[] ways;
    private final Point[] nodes;
    private final Extent[] cards;
    private final double[] arrives;

    private Wedges(FormTree tree) {
        this.tree = tree;
        this.runsAt = tree.runsAt();
        this.ways = new Way[tree.runs().size()];
        this.nodes = new Point[tree.nodes().size()];
        this.cards = new Extent[tree.nodes().size()];
        this.arrives = new double[tree.nodes().size()];
    }

    private record Sector(int node, int by, double fromDegrees, double toDegrees) {}

    static Laid of(FormTree tree) {
        return new Wedges(tree).laid();
    }

    private Laid laid() {
        int root = middle();
        int[] ends = ends(root);
        nodes[root] = new Point(0, 0);
        arrives[root] = 180;
        List<Sector> waiting = new ArrayList<>(List.of(new Sector(root, -1, 0, 360)));
        for (int k = 0; k < waiting.size(); k++) {
            share(waiting.get(k), ends, waiting);
        }
        cards();
        return new Laid(
                tree,
                Arrays.asList(ways),
                Arrays.asList(nodes),
                Arrays.stream(cards).map(Optional::ofNullable).toList());
    }

    private void share(Sector sector, int[] ends, List<Sector> waiting) {
        double width = sector.toDegrees() - sector.fromDegrees();
        List<Integer> beyond = runsAt.get(sector.node()).stream()
                .filter(run -> run != sector.by())
                .toList();
        int all = beyond.stream().mapToInt(run -> ends[run]).sum();
        double at = sector.fromDegrees();
        for (int number : beyond) {
            double part = width * ends[number] / all;
            double middle = at + part / 2;
            double half = Math.min(part, WIDEST_DEGREES) / 2;
            FormRun run = tree.runs().get(number);
            int to = run.other(sector.node());
            nodes[to] = Headings.from(nodes[sector.node()], middle, run.lengthMm());
            Way way = new Way(List.of(nodes[sector.node()], nodes[to]), 0);
            ways[number] = sector.node() == run.from() ? way : way.reversed();
            arrives[to] = middle;
            waiting.add(new Sector(to, number, middle - half, middle + half));
            at += part;
        }
    }

    private void cards() {
        CardSpots spots = new CardSpots(tree, ways);
        for (int node = 0; node < nodes.length; node++) {
            FormNode what = tree.nodes().get(node);
            if (what.hasCard() && runsAt.get(node).size() == 1) {
                int run = runsAt.get(node).get(0);
                cards[node] = spots.take(nodes[node], run, arrives[node], what.cardWidthMm(), what.cardHeightMm());
            }
        }
    }

    /** The node half way along the trunk. */
    private int middle() {
        List<Integer> trunk = tree.trunk();
        return trunk.isEmpty()
                ? 0
                : tree.runs().get(trunk.get(trunk.size() / 2)).from();
    }

    /** How many ends lie beyond each run as seen from the root. */
    private int[] ends(int root) {
        int[] back = new int[tree.nodes().size()];
        Arrays.fill(back, -1);
        List<Integer> order = new ArrayList<>(List.of(root));
        for (int k = 0; k < order.size(); k++) {
            int node = order.get(k);
            for (int run : runsAt.get(node)) {
                if (run != back[node]) {
                    int next = tree.runs().get(run).other(node);
                    back[next] = run;
                    order.add(next);
                }
            }
        }
        int[] ends = new int[tree.runs().size()];
        for (int k = order.size() - 1; k > 0; k--) {
            int node = order.get(k);
            int sum = 0;
            for (int run : runsAt.get(node)) {
                sum += run == back[node] ? 0 : ends[run];
            }
            ends[back[node]] = Math.max(1, sum);
        }
        return ends;
    }
}
