package org.ohmloom.draw;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.ohmloom.model.BreakoutId;

/**
 * One connected part of the physical harness as a tree; ties that close a loop or lead out of it are kept apart.
 *
 * @param breakouts its breakouts in order
 * @param branches  ties of the tree by breakout
 * @param loops     ties that would close a loop, or that lead to other breakouts than the given ones
 */
record Tree(SortedSet<BreakoutId> breakouts, Map<BreakoutId, List<Tie>> branches, List<Tie> loops) {

    /** The connected parts that hold the given breakouts, the one with the least breakout first. */
    static List<Tree> all(SortedSet<BreakoutId> breakouts, Ties ties) {
        List<Tree> trees = new ArrayList<>();
        SortedSet<BreakoutId> left = new TreeSet<>(breakouts);
        while (!left.isEmpty()) {
            Tree tree = from(left.first(), breakouts, ties);
            left.removeAll(tree.breakouts());
            trees.add(tree);
        }
        return trees;
    }

    /** Breadth first, so that a loop is opened at the tie farthest from the start. */
    private static Tree from(BreakoutId start, SortedSet<BreakoutId> allowed, Ties ties) {
        SortedSet<BreakoutId> seen = new TreeSet<>(List.of(start));
        Map<BreakoutId, List<Tie>> branches = new LinkedHashMap<>();
        List<Tie> used = new ArrayList<>();
        List<Tie> loops = new ArrayList<>();
        Deque<BreakoutId> waiting = new ArrayDeque<>(seen);
        while (!waiting.isEmpty()) {
            BreakoutId here = waiting.remove();
            for (Tie tie : ties.at(here)) {
                if (used.contains(tie) || loops.contains(tie)) {
                    continue;
                }
                if (!allowed.contains(tie.other(here))) {
                    loops.add(tie);
                } else if (seen.add(tie.other(here))) {
                    used.add(tie);
                    waiting.add(tie.other(here));
                    branches.computeIfAbsent(here, each -> new ArrayList<>()).add(tie);
                    branches.computeIfAbsent(tie.other(here), each -> new ArrayList<>())
                            .add(tie);
                } else {
                    loops.add(tie);
                }
            }
        }
        return new Tree(seen, branches, loops);
    }

    List<Tie> at(BreakoutId breakout) {
        return branches.getOrDefault(breakout, List.of());
    }

    /**
     * The longest path by a measure of ties, only its breakouts, at least one. It begins at the end nearer to a source,
     * otherwise at the end with the lesser identity.
     */
    List<BreakoutId> trunk(ToDoubleFunction<Tie> measure, Set<BreakoutId> sources) {
        List<BreakoutId> first = farthest(breakouts.first(), measure);
        List<BreakoutId> path = farthest(first.get(first.size() - 1), measure);
        BreakoutId start = path.get(0);
        BreakoutId end = path.get(path.size() - 1);
        int fromStart = steps(start, sources);
        int fromEnd = steps(end, sources);
        if (fromEnd < fromStart || (fromEnd == fromStart && start.compareTo(end) > 0)) {
            Collections.reverse(path);
        }
        return path;
    }

    /**
     * The longest way from a source, or from the least of the sources; without one the longest of all.
     *
     * @param sources breakouts at which sources hang
     */
    List<BreakoutId> fromSource(ToDoubleFunction<Tie> measure, Set<BreakoutId> sources) {
        return breakouts.stream()
                .filter(sources::contains)
                .findFirst()
                .map(source -> farthest(source, measure))
                .orElseGet(() -> trunk(measure, sources));
    }

    /** How many ties the nearest source is away. */
    private int steps(BreakoutId start, Set<BreakoutId> sources) {
        Set<BreakoutId> seen = new TreeSet<>();
        Set<BreakoutId> ring = Set.of(start);
        for (int steps = 0; !ring.isEmpty(); steps++) {
            if (!Collections.disjoint(ring, sources)) {
                return steps;
            }
            seen.addAll(ring);
            Set<BreakoutId> next = new TreeSet<>();
            ring.forEach(each -> at(each).forEach(tie -> next.add(tie.other(each))));
            next.removeAll(seen);
            ring = next;
        }
        return Integer.MAX_VALUE;
    }

    private List<BreakoutId> farthest(BreakoutId start, ToDoubleFunction<Tie> measure) {
        Map<BreakoutId, BreakoutId> before = new LinkedHashMap<>();
        Map<BreakoutId, Double> reach = new LinkedHashMap<>(Map.of(start, 0.0));
        Deque<BreakoutId> waiting = new ArrayDeque<>(List.of(start));
        while (!waiting.isEmpty()) {
            BreakoutId here = waiting.remove();
            for (Tie tie : at(here)) {
                BreakoutId next = tie.other(here);
                if (!reach.containsKey(next)) {
                    reach.put(next, reach.getOrDefault(here, 0.0) + measure.applyAsDouble(tie));
                    before.put(next, here);
                    waiting.add(next);
                }
            }
        }
        BreakoutId end = reach.entrySet().stream()
                .max(Comparator.comparing((Map.Entry<BreakoutId, Double> each) -> each.getValue())
                        .thenComparing(Map.Entry::getKey, Comparator.reverseOrder()))
                .orElseThrow()
                .getKey();
        List<BreakoutId> path = new ArrayList<>(List.of(end));
        while (before.containsKey(path.get(path.size() - 1))) {
            path.add(before.get(path.get(path.size() - 1)));
        }
        Collections.reverse(path);
        return path;
    }
}
