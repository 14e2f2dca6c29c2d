package org.ohmloom.draw.form;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

/**
 * Lays one piece: straight in a person's own directions when that fits; else the trunk in rows and the branches beside it, on as
 * little of the board as will do; else on a larger board.
 */
final class PieceLaying {

    private static final List<Double> SHARES = List.of(0.25, 0.4, 0.55, 0.75, 1.0);
    private static final double FULLEST = 0.75;
    private static final double GROWTH = 1.12;
    private static final int MOST_GROWTHS = 16;
    private static final int MOST_ROWS = 8;
    private static final int MORE_ROWS = 2;
    private static final int RETRIES = 6;
    private static final int MANY_RUNS = 120;

    /** Places looked at for one piece, over all boards and tries, before it is laid straight in sectors. */
    private static final long MOST_LOOKS = 5_000_000;

    /** Places looked at in one try, so that a larger board is tried before all are spent. */
    private static final long MOST_LOOKS_ONCE = 600_000;

    /** An end of the trunk longer than this may also be laid as a branch, mm. */
    private static final double LONG_END_MM = 700;

    /** Room before the end of a trunk from which branches go on, mm. */
    private static final double OPEN_END_MM = 120;

    private final FormTree tree;
    private final List<Trunk> trunks = new ArrayList<>();
    private final double needMm2;
    private long looksLeft = MOST_LOOKS;

    /** A way through the tree that is laid first, with the nodes it leads from and to. */
    private record Trunk(List<Integer> runs, int start, int end) {}

    private PieceLaying(FormTree tree) {
        this.tree = tree;
        List<Integer> longest = tree.trunk();
        trunks.add(trunk(longest));
        int from = shortEnd(longest.get(0)) ? 0 : 1;
        int to = longest.size() - (shortEnd(longest.get(longest.size() - 1)) ? 0 : 1);
        if (to - from < longest.size() && from < to) {
            trunks.add(trunk(longest.subList(from, to)));
        }
        double runsMm2 = tree.runs().stream()
                .mapToDouble(run -> run.lengthMm() * 2 * TreeLaying.reachMm(run))
                .sum();
        double cardsMm2 = tree.nodes().stream()
                .mapToDouble(each -> each.cardWidthMm() * each.cardHeightMm())
                .sum();
        this.needMm2 = runsMm2 + cardsMm2;
    }

    private boolean shortEnd(int run) {
        return tree.runs().get(run).lengthMm() <= LONG_END_MM;
    }

    private Trunk trunk(List<Integer> runs) {
        FormRun first = tree.runs().get(runs.get(0));
        boolean backwards = runs.size() > 1 && tree.runs().get(runs.get(1)).touches(first.from());
        int start = backwards ? first.to() : first.from();
        int node = start;
        for (int run : runs) {
            node = tree.runs().get(run).other(node);
        }
        return new Trunk(List.copyOf(runs), start, node);
    }

    /** The piece laid on a board of that size, or on a larger one when it does not fit. */
    static Laid lay(FormTree tree, double widthMm, double heightMm) {
        if (tree.runs().isEmpty()) {
            FormNode node = tree.nodes().get(0);
            Point at = new Point(0, 0);
            Optional<Extent> card = node.hasCard()
                    ? Optional.of(WaySearch.card(at, 0, node.cardWidthMm(), node.cardHeightMm()))
                    : Optional.empty();
            return new Laid(tree, List.of(), List.of(at), List.of(card));
        }
        PieceLaying laying = new PieceLaying(tree);
        return laying.asWished(widthMm, heightMm).orElseGet(() -> laying.inRows(widthMm, heightMm));
    }

    private Laid inRows(double widthMm, double heightMm) {
        double grown = 1;
        for (int k = 0; k < MOST_GROWTHS; k++) {
            for (double share : SHARES) {
                double high = heightMm * grown * share;
                if (looksLeft > 0 && needMm2 <= FULLEST * widthMm * grown * high) {
                    Optional<Laid> laid = onBoard(widthMm * grown, high);
                    if (laid.isPresent()) {
                        return laid.get();
                    }
                }
            }
            grown *= GROWTH;
        }
        return Wedges.of(tree);
    }

    private Optional<Laid> onBoard(double widthMm, double heightMm) {
        Extent board = new Extent(0, 0, widthMm, heightMm);
        for (Trunk trunk : trunks) {
            List<FormRun> runs = trunk.runs().stream().map(tree.runs()::get).toList();
            double margin =
                    1 + runs.stream().mapToDouble(TreeLaying::reachMm).max().orElse(0);
            TrunkTemplate template = new TrunkTemplate(runs, board, margin, endMm(trunk.start()), endMm(trunk.end()));
            int tried = 0;
            for (int rows = 1; rows <= MOST_ROWS && tried < MORE_ROWS; rows++) {
                Optional<List<Way>> along = template.rows(rows);
                if (along.isPresent()) {
                    tried++;
                    Optional<Laid> laid = tries(board, trunk, along.get());
                    if (laid.isPresent()) {
                        return laid;
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** Room before an end of the trunk: for its card, or for the branches that go on there. */
    private double endMm(int node) {
        FormNode what = tree.nodes().get(node);
        boolean leaf = tree.runs().stream().filter(run -> run.touches(node)).count() == 1;
        return !leaf ? OPEN_END_MM : what.hasCard() ? what.cardWidthMm() + WaySearch.CARD_GAP_MM : 0;
    }

    /** Lays branches; those that found no room come earlier the next time. */
    private Optional<Laid> tries(Extent board, Trunk trunk, List<Way> along) {
        double[] weights = tree.weights(trunk.start());
        int retries = tree.runs().size() > MANY_RUNS ? 1 : RETRIES;
        for (int k = 0; k < retries && looksLeft > 0; k++) {
            TreeLaying laying = new TreeLaying(tree, board, k % 2 == 1);
            if (!laying.trunk(trunk.runs(), trunk.start(), along)) {
                return Optional.empty();
            }
            Optional<Integer> stuck = laying.branches(weights, Math.min(MOST_LOOKS_ONCE, looksLeft));
            looksLeft -= laying.looks();
            if (stuck.isEmpty()) {
                return Optional.of(laying.laid());
            }
            weights[stuck.get()] *= 4;
        }
        return Optional.empty();
    }

    /** Straight in a person's own directions; empty without those for all runs, or when runs would come too close. */
    private Optional<Laid> asWished(double widthMm, double heightMm) {
        if (tree.runs().stream().anyMatch(run -> run.wishDegrees().isEmpty() && !run.leader())) {
            return Optional.empty();
        }
        int start = trunks.get(0).start();
        List<Integer> order = new ArrayList<>();
        Point[] at = new Point[tree.nodes().size()];
        at[start] = new Point(0, 0);
        List<List<Integer>> runsAt = tree.runsAt();
        Deque<Integer> waiting = new ArrayDeque<>(List.of(start));
        List<Extent> extents = new ArrayList<>();
        while (!waiting.isEmpty()) {
            int node = waiting.remove();
            for (int number : runsAt.get(node)) {
                FormRun run = tree.runs().get(number);
                int to = run.other(node);
                if (at[to] == null && !run.leader()) {
                    double degrees = run.wishFrom(node).orElse(0);
                    at[to] = Headings.from(at[node], degrees, run.lengthMm());
                    order.add(number);
                    waiting.add(to);
                    FormNode what = tree.nodes().get(to);
                    extents.add(Extent.around(List.of(at[node], at[to])).grown(TreeLaying.reachMm(run)));
                    extents.add(WaySearch.card(at[to], degrees, what.cardWidthMm(), what.cardHeightMm()));
                }
            }
        }
        FormNode first = tree.nodes().get(start);
        double back = Headings.normal(
                tree.runs().get(trunks.get(0).runs().get(0)).wishFrom(start).orElse(0) + 180);
        extents.add(WaySearch.card(at[start], back, first.cardWidthMm(), first.cardHeightMm()));
        Extent all = Extent.union(extents).orElseThrow().grown(1);
        return all.widthMm() > widthMm || all.heightMm() > heightMm ? Optional.empty() : straight(all, at, order, back);
    }

    private Optional<Laid> straight(Extent board, Point[] at, List<Integer> order, double back) {
        int start = trunks.get(0).start();
        TreeLaying laying = new TreeLaying(tree, board.grown(300), false);
        List<Integer> placed = new ArrayList<>(List.of(start));
        for (int number : order) {
            FormRun run = tree.runs().get(number);
            int from = placed.contains(run.from()) ? run.from() : run.to();
            Way way = new Way(List.of(at[from], at[run.other(from)]), 0);
            if (!laying.fits(run, number, from, way)) {
                return Optional.empty();
            }
            laying.put(number, from, way);
            placed.add(run.other(from));
        }
        boolean whole = laying.cardAt(start, back);
        return whole && laying.branches(tree.weights(start), looksLeft).isEmpty()
                ? Optional.of(laying.laid())
                : Optional.empty();
    }
}
