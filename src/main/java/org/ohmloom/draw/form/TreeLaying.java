package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

/** One try to lay a tree on a board: the trunk as given, then branch after branch, the one with most beyond it first. */
final class TreeLaying {

    /** Room beside every run for what is written there, mm. */
    static final double AIR_MM = 9;

    private static final double LEAST_ANGLE_DEGREES = 35;
    private static final double CLOSE_ANGLE_DEGREES = 20;
    private static final int CROWDED = 7;
    private static final double NODE_MM = 34;
    private static final double NEAR_MM = 40;
    private static final int MOST_FOLDS = 5;
    private static final double SLANT = 120;
    private static final List<Double> LEADERS_MM = List.of(35.0, 60.0, 100.0, 160.0, 240.0);

    private static final FormRun NARROW = new FormRun("", 0, 0, 1, 0, 0, OptionalDouble.empty(), false);

    private final FormTree tree;
    private final boolean compact;
    private final Room room;
    private final WaySearch search;
    private final List<List<Integer>> runsAt;
    private final Way[] ways;
    private final Point[] nodes;
    private final Extent[] cards;

    /**
     * An empty board for a tree.
     *
     * @param compact whether runs are rather bent to lie level or upright than straight and slanting
     */
    TreeLaying(FormTree tree, Extent board, boolean compact) {
        this.tree = tree;
        this.compact = compact;
        this.room = new Room(board);
        this.search = new WaySearch(room);
        this.runsAt = tree.runsAt();
        this.ways = new Way[tree.runs().size()];
        this.nodes = new Point[tree.nodes().size()];
        this.cards = new Extent[tree.nodes().size()];
    }

    static double reachMm(FormRun run) {
        return run.widthMm() / 2 + (run.leader() ? 2 : AIR_MM);
    }

    /** Lays runs of a trunk, in order along it; false when they do not fit. */
    boolean trunk(List<Integer> trunk, int start, List<Way> along) {
        int node = start;
        for (int k = 0; k < trunk.size(); k++) {
            FormRun run = tree.runs().get(trunk.get(k));
            if (!fits(run, trunk.get(k), node, along.get(k))) {
                return false;
            }
            put(trunk.get(k), node, along.get(k));
            node = run.other(node);
        }
        return cardAt(start, Headings.normal(along.get(0).startDegrees() + 180));
    }

    boolean cardAt(int node, double degrees) {
        FormNode what = tree.nodes().get(node);
        if (!what.hasCard() || cards[node] != null || runsAt.get(node).size() > 1) {
            return true;
        }
        Extent card = WaySearch.card(nodes[node], degrees, what.cardWidthMm(), what.cardHeightMm());
        boolean free = !room.isOnCard(card)
                && Capsule.of(card, Room.CARD).stream()
                        .allMatch(row -> room.isFree(row, owner -> touches(owner, node)));
        cards[node] = card;
        room.addCard(card);
        return free;
    }

    /** Whether a way that was made elsewhere lies free. */
    boolean fits(FormRun run, int number, int from, Way way) {
        double gone = 0;
        double near = nearMm(run, from);
        for (int k = 1; k < way.points().size(); k++) {
            Point a = way.points().get(k - 1);
            Point b = way.points().get(k);
            double length = a.distanceMm(b);
            double cut = Math.max(0, Math.min(length, near - gone));
            Point middle = length == 0 ? a : a.towards(b, cut / length);
            if (cut > 0 && !room.isFree(new Capsule(a, middle, reachMm(run), number), owner -> touches(owner, from))) {
                return false;
            }
            if (cut < length && !room.isFree(new Capsule(middle, b, reachMm(run), number), owner -> false)) {
                return false;
            }
            gone += length;
        }
        return true;
    }

    private boolean touches(int owner, int node) {
        return owner >= 0 ? tree.runs().get(owner).touches(node) : owner == Room.keptFor(node);
    }

    /** Whether so many runs meet at a node that they leave it closer to one another. */
    private boolean crowded(int node) {
        return runsAt.get(node).size() > CROWDED;
    }

    private double nearMm(FormRun run, int node) {
        double widest = runsAt.get(node).stream()
                .mapToDouble(each -> reachMm(tree.runs().get(each)))
                .max()
                .orElse(0);
        return NEAR_MM + (crowded(node) ? 2.9 : 1.6) * (widest + reachMm(run));
    }

    /** Lays a run along a way that begins at one of its nodes. */
    void put(int number, int from, Way way) {
        FormRun run = tree.runs().get(number);
        int to = run.other(from);
        nodes[from] = way.first();
        for (int k = 1; k < way.points().size(); k++) {
            room.add(new Capsule(way.points().get(k - 1), way.points().get(k), reachMm(run), number));
        }
        ways[number] = from == run.from() ? way : way.reversed();
        nodes[to] = way.last();
        keep(from);
        keep(to);
        cardAt(to, way.endDegrees());
    }

    /** How many places were looked at. */
    long looks() {
        return room.looks();
    }

    /** Keeps room around a node for what is still to leave it, or frees it. */
    private void keep(int node) {
        room.release(Room.keptFor(node));
        if (runsAt.get(node).stream().anyMatch(run -> ways[run] == null)) {
            Point a = nodes[node];
            room.add(new Capsule(a, a, NODE_MM, Room.keptFor(node)));
        }
    }

    /**
     * Lays all that is not laid yet.
     *
     * @param weights   how early each run is laid; more is earlier
     * @param mostLooks how many places may be looked at before it gives up
     * @return the run there is no room for, or no time; empty when all are laid
     */
    Optional<Integer> branches(double[] weights, long mostLooks) {
        Set<Integer> waiting = new LinkedHashSet<>();
        for (int node = 0; node < nodes.length; node++) {
            if (nodes[node] != null) {
                runsAt.get(node).stream().filter(run -> ways[run] == null).forEach(waiting::add);
            }
        }
        while (!waiting.isEmpty()) {
            int number = waiting.stream()
                    .max(Comparator.comparingDouble((Integer run) -> weights[run])
                            .thenComparing(Comparator.<Integer>naturalOrder().reversed()))
                    .orElseThrow();
            waiting.remove(number);
            FormRun run = tree.runs().get(number);
            int from = nodes[run.from()] != null ? run.from() : run.to();
            Optional<Way> way = room.looks() > mostLooks ? Optional.empty() : best(number, from, weights);
            if (way.isEmpty()) {
                return Optional.of(number);
            }
            put(number, from, way.get());
            runsAt.get(run.other(from)).stream()
                    .filter(each -> ways[each] == null)
                    .forEach(waiting::add);
        }
        return Optional.empty();
    }

    private Optional<Way> best(int number, int from, double[] weights) {
        FormRun run = tree.runs().get(number);
        List<Double> lengths = run.leader() ? LEADERS_MM : List.of(run.lengthMm());
        for (double length : lengths) {
            List<Way> found = new ArrayList<>();
            for (int folds = 0; folds <= (run.leader() ? 0 : MOST_FOLDS); folds++) {
                search.ways(task(number, from, length), folds).stream()
                        .filter(way -> !crossesSibling(way, from))
                        .forEach(found::add);
                if (!found.isEmpty() && (!compact || run.leader() || folds > 0)) {
                    return Optional.of(best(found, number, from, weights));
                }
            }
        }
        return Optional.empty();
    }

    /** Whether a way crosses another at the same node, close to which the room beside runs is not kept. */
    private boolean crossesSibling(Way way, int from) {
        double near = 2 * nearMm(NARROW, from);
        for (int number : runsAt.get(from)) {
            if (ways[number] != null) {
                List<Point> other =
                        (tree.runs().get(number).from() == from ? ways[number] : ways[number].reversed()).points();
                if (crossNear(way.points(), other, near)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean crossNear(List<Point> one, List<Point> other, double near) {
        for (int i = 1; i < one.size() && one.get(i - 1).distanceMm(one.get(0)) < near; i++) {
            for (int j = 1; j < other.size(); j++) {
                if (Capsule.cross(one.get(i - 1), one.get(i), other.get(j - 1), other.get(j))) {
                    return true;
                }
            }
        }
        return false;
    }

    private WaySearch.Task task(int number, int from, double length) {
        FormRun run = tree.runs().get(number);
        FormNode end = tree.nodes().get(run.other(from));
        boolean leaf = runsAt.get(run.other(from)).size() == 1;
        return new WaySearch.Task(
                nodes[from],
                length,
                reachMm(run),
                Math.max(run.bendMm(), reachMm(run) + 1),
                headings(run, from),
                owner -> touches(owner, from),
                nearMm(run, from),
                crowded(from) ? 0.7 * nearMm(run, from) : 0,
                leaf ? end.cardWidthMm() : 0,
                leaf ? end.cardHeightMm() : 0,
                number);
    }

    /** The directions that lie far enough from those already taken, a person's own first. */
    private List<Double> headings(FormRun run, int from) {
        List<Double> taken = taken(from);
        List<Double> headings = new ArrayList<>();
        run.wishFrom(from).ifPresent(headings::add);
        double step = crowded(from) ? 22.5 : 45;
        for (double each = 0; each < 360; each += step) {
            headings.add(each);
        }
        List<Double> free = new ArrayList<>();
        for (double least : new double[] {LEAST_ANGLE_DEGREES, CLOSE_ANGLE_DEGREES}) {
            if (least == LEAST_ANGLE_DEGREES && crowded(from)) {
                continue;
            }
            headings.stream()
                    .filter(each -> taken.stream().allMatch(other -> Headings.between(each, other) >= least))
                    .forEach(free::add);
            if (!free.isEmpty()) {
                return free;
            }
        }
        return between(taken);
    }

    /** Where many runs meet: the middle of the widest gap between them. */
    private static List<Double> between(List<Double> taken) {
        List<Double> sorted = new ArrayList<>(taken);
        Collections.sort(sorted);
        double best = 0;
        double widest = 0;
        for (int k = 0; k < sorted.size(); k++) {
            double next = k + 1 < sorted.size() ? sorted.get(k + 1) : sorted.get(0) + 360;
            if (next - sorted.get(k) > widest) {
                widest = next - sorted.get(k);
                best = Headings.normal((next + sorted.get(k)) / 2);
            }
        }
        return List.of(best);
    }

    private List<Double> taken(int node) {
        List<Double> taken = new ArrayList<>();
        for (int run : runsAt.get(node)) {
            if (ways[run] != null) {
                boolean begins = tree.runs().get(run).from() == node;
                taken.add(begins ? ways[run].startDegrees() : Headings.normal(ways[run].endDegrees() + 180));
            }
        }
        return taken;
    }

    private Way best(List<Way> found, int number, int from, double[] weights) {
        FormRun run = tree.runs().get(number);
        List<Double> taken = taken(from);
        boolean leaf = runsAt.get(run.other(from)).size() == 1;
        double beyond = weights[number];
        return found.stream()
                .min(Comparator.comparingDouble(way -> badness(run, from, way, taken)
                        + (compact && !run.leader() ? SLANT * slanting(way) - 70 * way.folds() : 0)
                        - (leaf ? 0 : 160 * opennessAt(way, beyond))))
                .orElseThrow();
    }

    /** Share of a way that lies neither level nor upright. */
    private static double slanting(Way way) {
        double slanting = 0;
        for (int k = 1; k < way.points().size(); k++) {
            Point a = way.points().get(k - 1);
            Point b = way.points().get(k);
            double rest = Headings.to(a, b) % 90;
            slanting += Math.min(rest, 90 - rest) > 1 ? a.distanceMm(b) : 0;
        }
        return slanting / way.lengthMm();
    }

    private static double badness(FormRun run, int from, Way way, List<Double> taken) {
        double start = way.startDegrees();
        double narrow = taken.stream()
                .mapToDouble(each -> Headings.between(each, start))
                .min()
                .orElse(90);
        double slanted = Math.min(start % 90, 90 - start % 90);
        double wish = run.wishFrom(from).isPresent()
                ? Headings.between(run.wishFrom(from).getAsDouble(), start)
                : slanted * 0.4 + Math.max(0, 90 - narrow) * 0.5;
        double up = start > 180 && start < 360 ? 0 : 0.5;
        return 100 * way.folds() + wish + up;
    }

    /** How open the board is around the end of a way, 0 to 1. */
    private double opennessAt(Way way, double beyondMm) {
        double cap = Math.max(150, Math.min(700, beyondMm / 3));
        double sum = 0;
        for (int k = 0; k < 8; k++) {
            double gone = 0;
            while (gone < cap) {
                Point a = Headings.from(way.last(), k * 45.0, gone);
                Point b = Headings.from(way.last(), k * 45.0, gone + 50);
                if (!room.isFree(new Capsule(a, b, AIR_MM, Integer.MAX_VALUE), owner -> false)) {
                    break;
                }
                gone += 50;
            }
            sum += Math.min(gone, cap);
        }
        return sum / (8 * cap);
    }

    /** What has been laid; only when all is. */
    Laid laid() {
        return new Laid(
                tree,
                Arrays.asList(ways),
                Arrays.asList(nodes),
                Arrays.stream(cards).map(Optional::ofNullable).toList());
    }
}
