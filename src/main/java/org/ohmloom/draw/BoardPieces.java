package org.ohmloom.draw;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.model.BreakoutId;

/**
 * Shares the board out to as many sheets as it needs to stay legible. From a board that does not fit the
 * largest part that does is cut off at one tie, rather at an in-line pair than in a segment, until all is shared out;
 * parts that fit on one sheet share it.
 */
final class BoardPieces {

    private static final double PAIR_WORTH = 1.6;

    /** Cards and runs fill no more of a sheet: what does is not laid out to see; 0.36 is the most seen. */
    private static final double MOST_FILLED = 0.5;

    private static final int MANY = 120;
    private static final double STEP_RATIO = 0.97;

    private final BoardMaker maker;
    private final double widthMm;
    private final double firstMm;
    private final double heightMm;

    /**
     * Pieces for sheets of a size.
     *
     * @param widthMm  room across, mm
     * @param firstMm  room down on the first sheet, mm
     * @param heightMm room down on every other, mm
     */
    BoardPieces(BoardMaker maker, double widthMm, double firstMm, double heightMm) {
        this.maker = maker;
        this.widthMm = widthMm;
        this.firstMm = firstMm;
        this.heightMm = heightMm;
    }

    /** The pieces in drawing order, the breakouts of the whole harness shared out among them. */
    List<SortedSet<BreakoutId>> all() {
        List<SortedSet<BreakoutId>> done = new ArrayList<>();
        Deque<SortedSet<BreakoutId>> waiting = new ArrayDeque<>();
        Tree.all(maker.stations().breakouts(), maker.ties()).forEach(tree -> waiting.add(tree.breakouts()));
        while (!waiting.isEmpty()) {
            SortedSet<BreakoutId> next = waiting.remove();
            SortedSet<BreakoutId> part = fits(next, heightMm) ? next : part(next, heightMm);
            done.add(part);
            if (part.size() < next.size()) {
                SortedSet<BreakoutId> rest = new TreeSet<>(next);
                rest.removeAll(part);
                waiting.addFirst(rest);
            }
        }
        return merged(firstFitted(ordered(done)));
    }

    /** The pieces, the first of them cut once more where the first sheet has less room. */
    private List<SortedSet<BreakoutId>> firstFitted(List<SortedSet<BreakoutId>> pieces) {
        if (pieces.isEmpty() || fits(pieces.get(0), firstMm)) {
            return pieces;
        }
        List<SortedSet<BreakoutId>> fitted = new ArrayList<>(pieces);
        SortedSet<BreakoutId> whole = fitted.remove(0);
        SortedSet<BreakoutId> part = part(whole, firstMm);
        SortedSet<BreakoutId> rest = new TreeSet<>(whole);
        rest.removeAll(part);
        fitted.add(0, part);
        if (!rest.isEmpty()) {
            fitted.add(1, rest);
        }
        return fitted;
    }

    /** The piece with a source first, then the pieces joined to those before. */
    private List<SortedSet<BreakoutId>> ordered(List<SortedSet<BreakoutId>> pieces) {
        List<SortedSet<BreakoutId>> left = new ArrayList<>(pieces);
        List<SortedSet<BreakoutId>> ordered = new ArrayList<>();
        SortedSet<BreakoutId> sources = maker.stations().sources();
        SortedSet<BreakoutId> reached = new TreeSet<>();
        while (!left.isEmpty()) {
            boolean first = ordered.isEmpty();
            SortedSet<BreakoutId> next = left.stream()
                    .filter(piece -> first ? !Collections.disjoint(piece, sources) : joined(piece, reached))
                    .max(Comparator.comparingDouble(this::weight))
                    .orElse(left.get(0));
            left.remove(next);
            ordered.add(next);
            reached.addAll(next);
        }
        return ordered;
    }

    private boolean joined(SortedSet<BreakoutId> piece, SortedSet<BreakoutId> reached) {
        return piece.stream()
                .anyMatch(id -> maker.ties().at(id).stream().anyMatch(tie -> reached.contains(tie.other(id))));
    }

    /** Pieces that fit on the sheet of an earlier one join it. */
    private List<SortedSet<BreakoutId>> merged(List<SortedSet<BreakoutId>> pieces) {
        List<SortedSet<BreakoutId>> merged = new ArrayList<>();
        for (SortedSet<BreakoutId> piece : pieces) {
            boolean placed = false;
            for (int k = 0; k < merged.size() && !placed; k++) {
                SortedSet<BreakoutId> both = new TreeSet<>(piece);
                both.addAll(merged.get(k));
                placed = fits(both, k == 0 ? firstMm : heightMm);
                if (placed) {
                    merged.set(k, both);
                }
            }
            if (!placed) {
                merged.add(piece);
            }
        }
        return merged;
    }

    private boolean fits(SortedSet<BreakoutId> breakouts, double roomMm) {
        double least = breakouts.stream().mapToDouble(maker::leastAreaMm2).sum();
        return least <= MOST_FILLED * widthMm * roomMm
                && maker.boundsOnSheet(breakouts, widthMm / roomMm)
                        .filter(extent -> extent.widthMm() <= widthMm && extent.heightMm() <= roomMm)
                        .isPresent()
                && Piece.bounds(maker.items(breakouts, widthMm / roomMm, Map.of(), Elsewhere.UNSETTLED))
                        .map(extent -> extent.widthMm() <= widthMm && extent.heightMm() <= roomMm)
                        .orElse(true);
    }

    /**
     * The weightiest part beyond one tie that fits; the single breakout of least weight when none does. Of very many parts
     * those hardly smaller than one that did not fit are not tried.
     */
    private SortedSet<BreakoutId> part(SortedSet<BreakoutId> whole, double roomMm) {
        List<Part> parts = Tree.all(whole, maker.ties()).stream()
                .flatMap(tree -> parts(tree).stream())
                .sorted(Comparator.comparingDouble(Part::worth).reversed().thenComparing(Part::start))
                .toList();
        double most = MOST_FILLED * widthMm * roomMm;
        for (Part part : parts) {
            if (part.leastAreaMm2() <= most) {
                SortedSet<BreakoutId> side = side(part);
                if (fits(side, roomMm)) {
                    return side;
                }
                most = parts.size() > MANY ? STEP_RATIO * part.leastAreaMm2() : most;
            }
        }
        return parts.isEmpty() ? whole : side(parts.get(parts.size() - 1));
    }

    /**
     * What lies on one side of a tie of a tree.
     *
     * @param worth        how good it is to cut it off
     * @param leastAreaMm2 room that its things take at least, mm2
     */
    private record Part(Tree tree, Tie cut, BreakoutId start, double worth, double leastAreaMm2) {}

    /** Both sides of every tie of a tree, summed up from the ends inwards. */
    private List<Part> parts(Tree tree) {
        BreakoutId root = tree.breakouts().first();
        List<BreakoutId> order = new ArrayList<>(List.of(root));
        Map<BreakoutId, Tie> upwards = new LinkedHashMap<>();
        for (int k = 0; k < order.size(); k++) {
            BreakoutId here = order.get(k);
            for (Tie tie : tree.at(here)) {
                if (!tie.equals(upwards.get(here))) {
                    upwards.put(tie.other(here), tie);
                    order.add(tie.other(here));
                }
            }
        }
        Map<BreakoutId, double[]> sums = new LinkedHashMap<>();
        order.forEach(id -> sums.put(id, new double[] {weight(id), maker.leastAreaMm2(id)}));
        for (int k = order.size() - 1; k > 0; k--) {
            double[] own = sums.getOrDefault(order.get(k), new double[2]);
            double[] above = sums.getOrDefault(above(order.get(k), upwards), new double[2]);
            above[0] += own[0];
            above[1] += own[1];
        }
        double[] all = sums.getOrDefault(root, new double[2]);
        List<Part> parts = new ArrayList<>();
        for (BreakoutId id : order.subList(1, order.size())) {
            Tie tie = upwards.getOrDefault(id, tree.at(id).get(0));
            double[] own = sums.getOrDefault(id, new double[2]);
            double worth = tie.segment().isEmpty() ? PAIR_WORTH : 1;
            parts.add(new Part(tree, tie, id, own[0] * worth, own[1]));
            parts.add(new Part(tree, tie, tie.other(id), (all[0] - own[0]) * worth, all[1] - own[1]));
        }
        return parts;
    }

    private static BreakoutId above(BreakoutId id, Map<BreakoutId, Tie> upwards) {
        Tie tie = upwards.get(id);
        return tie == null ? id : tie.other(id);
    }

    private double weight(SortedSet<BreakoutId> breakouts) {
        return breakouts.stream().mapToDouble(this::weight).sum();
    }

    private double weight(BreakoutId id) {
        return 1 + 2 * maker.stations().at(id).size();
    }

    /** The breakouts on one side of a tie of the tree. */
    private static SortedSet<BreakoutId> side(Part part) {
        SortedSet<BreakoutId> seen = new TreeSet<>(List.of(part.start()));
        Deque<BreakoutId> waiting = new ArrayDeque<>(seen);
        while (!waiting.isEmpty()) {
            BreakoutId here = waiting.remove();
            for (Tie tie : part.tree().at(here)) {
                if (!tie.equals(part.cut()) && seen.add(tie.other(here))) {
                    waiting.add(tie.other(here));
                }
            }
        }
        return seen;
    }
}
