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
import java.util.stream.Stream;
import org.ohmloom.model.BreakoutId;

/**
 * Shares the board out to as many sheets as it needs to stay legible. From a board that does not fit the
 * largest part that does is cut off at one tie, rather at an in-line pair than in a segment, until all is shared out;
 * parts that fit on one sheet share it.
 */
final class BoardPieces {

    private static final double PAIR_WORTH = 1.6;
    private static final String ROOM_FOR_A_NUMBER = ", sheet\u00a099";

    private final BoardMaker maker;
    private final double widthMm;
    private final double heightMm;

    BoardPieces(BoardMaker maker, double widthMm, double heightMm) {
        this.maker = maker;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /** The pieces in drawing order, the breakouts of the whole harness shared out among them. */
    List<SortedSet<BreakoutId>> all() {
        List<SortedSet<BreakoutId>> done = new ArrayList<>();
        Deque<SortedSet<BreakoutId>> waiting = new ArrayDeque<>();
        Tree.all(maker.stations().breakouts(), maker.ties()).forEach(tree -> waiting.add(tree.breakouts()));
        while (!waiting.isEmpty()) {
            SortedSet<BreakoutId> next = waiting.remove();
            SortedSet<BreakoutId> part = fits(next) ? next : part(next);
            done.add(part);
            if (part.size() < next.size()) {
                SortedSet<BreakoutId> rest = new TreeSet<>(next);
                rest.removeAll(part);
                waiting.addFirst(rest);
            }
        }
        return merged(ordered(done));
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
                placed = fits(both);
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

    private boolean fits(SortedSet<BreakoutId> breakouts) {
        Map<BreakoutId, String> elsewhere = new LinkedHashMap<>();
        maker.stations().breakouts().forEach(id -> elsewhere.put(id, ROOM_FOR_A_NUMBER));
        return Piece.bounds(maker.items(breakouts, widthMm / heightMm, Map.of(), elsewhere))
                .map(extent -> extent.widthMm() <= widthMm && extent.heightMm() <= heightMm)
                .orElse(true);
    }

    /** The weightiest part beyond one tie that fits; the single breakout of least weight when none does. */
    private SortedSet<BreakoutId> part(SortedSet<BreakoutId> whole) {
        List<Part> parts = Tree.all(whole, maker.ties()).stream()
                .flatMap(tree -> tree.branches().values().stream().flatMap(List::stream))
                .distinct()
                .flatMap(tie -> Stream.of(part(whole, tie, tie.from()), part(whole, tie, tie.to())))
                .sorted(Comparator.comparingDouble(Part::worth).reversed().thenComparing(part -> part.breakouts()
                        .first()))
                .toList();
        return parts.stream()
                .map(Part::breakouts)
                .filter(this::fits)
                .findFirst()
                .orElseGet(() ->
                        parts.isEmpty() ? whole : parts.get(parts.size() - 1).breakouts());
    }

    private record Part(SortedSet<BreakoutId> breakouts, double worth) {}

    private Part part(SortedSet<BreakoutId> whole, Tie cut, BreakoutId start) {
        SortedSet<BreakoutId> side = side(whole, cut, start);
        return new Part(side, weight(side) * (cut.segment().isEmpty() ? PAIR_WORTH : 1));
    }

    private double weight(SortedSet<BreakoutId> breakouts) {
        return breakouts.stream()
                .mapToDouble(id -> 1 + 2 * maker.stations().at(id).size())
                .sum();
    }

    /** The breakouts on one side of a tie of the tree. */
    private SortedSet<BreakoutId> side(SortedSet<BreakoutId> breakouts, Tie cut, BreakoutId start) {
        Tree tree = Tree.all(breakouts, maker.ties()).stream()
                .filter(each -> each.breakouts().contains(start))
                .findFirst()
                .orElseThrow();
        SortedSet<BreakoutId> seen = new TreeSet<>(List.of(start));
        Deque<BreakoutId> waiting = new ArrayDeque<>(seen);
        while (!waiting.isEmpty()) {
            BreakoutId here = waiting.remove();
            for (Tie tie : tree.at(here)) {
                if (!tie.equals(cut) && seen.add(tie.other(here))) {
                    waiting.add(tie.other(here));
                }
            }
        }
        return seen;
    }
}
