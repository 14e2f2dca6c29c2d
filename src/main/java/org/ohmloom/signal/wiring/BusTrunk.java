package org.ohmloom.signal.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.signal.way.Ways;

/**
 * Where the trunk of a bus runs: between the two nodes furthest apart, past the others. A node nearer to it than a stub may be long
 * hangs on a stub from the place where the way to it leaves the trunk; to a node further off the trunk makes a detour.
 *
 * @param first  the node at one end, by its number
 * @param last   the node at the other end
 * @param passed the nodes between them in the order the trunk comes by
 */
record BusTrunk(int first, int last, List<Passed> passed) {

    /**
     * A node the trunk passes.
     *
     * @param node  its number
     * @param leave where its stub leaves the trunk; the node's own place for a detour
     */
    record Passed(int node, Optional<BreakoutId> leave) {}

    private record Along(Passed passed, int step, double stubMetres) {}

    /**
     * The trunk.
     *
     * @param places     where each node is reached
     * @param ways       ways between places
     * @param stubMetres most length of the way of a stub, m
     */
    static BusTrunk of(List<Optional<BreakoutId>> places, Ways ways, double stubMetres) {
        int first = 0;
        int last = places.size() - 1;
        double longest = -1;
        for (int i = 0; i < places.size(); i++) {
            for (int j = i + 1; j < places.size(); j++) {
                OptionalDouble metres = ways.metres(places.get(i), places.get(j));
                if (metres.isPresent() && metres.getAsDouble() > longest) {
                    longest = metres.getAsDouble();
                    first = i;
                    last = j;
                }
            }
        }
        List<BreakoutId> along = along(places.get(first), places.get(last), ways);
        List<Along> between = new ArrayList<>();
        for (int node = 0; node < places.size(); node++) {
            if (node != first && node != last) {
                between.add(nearest(node, places.get(node), along, ways, stubMetres));
            }
        }
        between.sort(Comparator.comparingInt(Along::step).thenComparingDouble(Along::stubMetres));
        return new BusTrunk(first, last, between.stream().map(Along::passed).toList());
    }

    /** Length of a way and a little for each pair of connectors on it, m: a stub leaves behind a pair, not before it. */
    private static OptionalDouble metresAndPairs(Optional<BreakoutId> from, Optional<BreakoutId> to, Ways ways) {
        return ways.way(from, to).stream()
                .mapToDouble(steps ->
                        steps.stream().mapToDouble(Ways.Step::comparedMetres).sum())
                .findFirst();
    }

    private static List<BreakoutId> along(Optional<BreakoutId> from, Optional<BreakoutId> to, Ways ways) {
        List<BreakoutId> places = new ArrayList<>();
        if (from.isPresent() && to.isPresent()) {
            places.add(from.get());
            ways.way(from, to).ifPresent(steps -> steps.forEach(step -> places.add(step.to())));
        }
        return places;
    }

    private static Along nearest(
            int node, Optional<BreakoutId> at, List<BreakoutId> along, Ways ways, double stubMetres) {
        int step = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < along.size(); k++) {
            OptionalDouble metres = metresAndPairs(at, Optional.of(along.get(k)), ways);
            if (metres.isPresent() && metres.getAsDouble() < least) {
                least = metres.getAsDouble();
                step = k;
            }
        }
        boolean stub = least <= stubMetres;
        return new Along(new Passed(node, stub ? Optional.of(along.get(step)) : at), step, stub ? least : 0);
    }
}
