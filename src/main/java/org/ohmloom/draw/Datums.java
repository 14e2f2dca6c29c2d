package org.ohmloom.draw;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import org.ohmloom.model.BreakoutId;

/**
 * From where each breakout is measured. The longest way from the source of each connected part is its trunk; a datum lies at the
 * trunk's beginning and behind every in-line pair of connectors along it, and the breakouts of the trunk are measured from the datum
 * before them. Every other breakout is measured from the one its segment leaves.
 */
final class Datums {

    /**
     * How far a breakout lies from where it is measured.
     *
     * @param breakout the breakout
     * @param datum    name of the datum it is measured from; empty when that is only a breakout
     * @param from     the breakout it is measured from
     * @param along    ids of the segments between them in order
     * @param metres   distance, m
     */
    record Measured(BreakoutId breakout, String datum, BreakoutId from, List<String> along, double metres) {}

    private final Map<BreakoutId, Measured> measured = new LinkedHashMap<>();
    private final Map<BreakoutId, String> names = new LinkedHashMap<>();

    Datums(SortedSet<BreakoutId> breakouts, Ties ties, SortedSet<BreakoutId> sources) {
        for (Tree tree : Tree.all(breakouts, ties)) {
            List<BreakoutId> trunk = tree.fromSource(Tie::lengthMetres, sources);
            along(tree, trunk);
            beside(tree, trunk);
        }
    }

    /** The breakouts that are measured, in the order of the drawing. */
    List<Measured> all() {
        return List.copyOf(measured.values());
    }

    Optional<Measured> of(BreakoutId breakout) {
        return Optional.ofNullable(measured.get(breakout));
    }

    /** Name of the datum at a breakout, "D1"; empty where there is none. */
    String at(BreakoutId breakout) {
        return names.getOrDefault(breakout, "");
    }

    private void along(Tree tree, List<BreakoutId> trunk) {
        BreakoutId datum = trunk.get(0);
        List<String> along = new ArrayList<>();
        double metres = 0;
        for (int k = 1; k < trunk.size(); k++) {
            BreakoutId next = trunk.get(k);
            Tie tie = between(tree, trunk.get(k - 1), next);
            if (tie.segment().isEmpty()) {
                datum = next;
                along.clear();
                metres = 0;
                continue;
            }
            names.computeIfAbsent(datum, each -> "D" + (names.size() + 1));
            along.add(tie.id());
            metres += tie.lengthMetres();
            measured.put(next, new Measured(next, at(datum), datum, List.copyOf(along), metres));
        }
    }

    private void beside(Tree tree, List<BreakoutId> trunk) {
        Deque<BreakoutId> waiting = new ArrayDeque<>(trunk);
        List<BreakoutId> seen = new ArrayList<>(trunk);
        while (!waiting.isEmpty()) {
            BreakoutId here = waiting.remove();
            for (Tie tie : tree.at(here)) {
                BreakoutId next = tie.other(here);
                if (seen.contains(next)) {
                    continue;
                }
                seen.add(next);
                waiting.add(next);
                if (tie.segment().isPresent()) {
                    measured.put(next, new Measured(next, "", here, List.of(tie.id()), tie.lengthMetres()));
                }
            }
        }
    }

    private static Tie between(Tree tree, BreakoutId one, BreakoutId other) {
        return tree.at(one).stream()
                .filter(tie -> tie.touches(other))
                .findFirst()
                .orElseThrow();
    }
}
