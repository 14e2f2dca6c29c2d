package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.function.Function;
import java.util.function.Predicate;
import org.ohmloom.model.ElementId;

/**
 * The shortest ways along conductors from one point of a feed to every other.
 *
 * <p>Dijkstra's search by length of wire, then by count of branches; a wire of unknown length counts as 0 and makes the
 * length of its way unknown. A point may be reached by either contact of a change-over switch, so a place of the search
 * is a point with the switch it was entered by.
 */
final class FeedSearch {
    private final Function<Branch, OptionalDouble> lengths;
    private final Map<Place, Visit> visits = new HashMap<>();
    private final Map<PointId, Place> best = new HashMap<>();

    private record Place(PointId point, Optional<ElementId> enteredBy) {}

    private record Visit(double metres, int count, boolean known, Optional<Place> before, Optional<Branch> over) {}

    private record Candidate(Place place, Visit visit) {}

    /**
     * Searches from a point.
     *
     * @param adjacency branches that may be passed
     * @param lengths   length of a branch, m; empty when it is not known
     * @param passes    branches that are passed; the search stops before any other
     */
    FeedSearch(Adjacency adjacency, Function<Branch, OptionalDouble> lengths, Predicate<Branch> passes, PointId start) {
        this.lengths = lengths;
        PriorityQueue<Candidate> open =
                new PriorityQueue<>(Comparator.comparingDouble((Candidate each) -> each.visit.metres)
                        .thenComparingInt(each -> each.visit.count)
                        .thenComparing(each -> each.place.point));
        Place first = new Place(start, Optional.empty());
        open.add(new Candidate(first, new Visit(0, 0, true, Optional.empty(), Optional.empty())));
        while (!open.isEmpty()) {
            Candidate nearest = open.remove();
            if (visits.putIfAbsent(nearest.place, nearest.visit) == null) {
                best.putIfAbsent(nearest.place.point, nearest.place);
                adjacency.at(nearest.place.point).stream().filter(passes).forEach(branch -> step(nearest, branch)
                        .ifPresent(open::add));
            }
        }
    }

    private Optional<Candidate> step(Candidate at, Branch branch) {
        Optional<ElementId> changeOver = FeedRules.changeOver(branch);
        boolean barred = changeOver.isPresent() && changeOver.equals(at.place.enteredBy);
        if (barred || !FeedRules.opensFrom(branch, at.place.point)) {
            return Optional.empty();
        }
        Optional<ElementId> enteredBy = branch.isPlain() ? at.place.enteredBy : changeOver;
        Place next = new Place(Adjacency.across(branch, at.place.point), enteredBy);
        OptionalDouble metres = lengths.apply(branch);
        return Optional.of(new Candidate(
                next,
                new Visit(
                        at.visit.metres + metres.orElse(0),
                        at.visit.count + 1,
                        at.visit.known && metres.isPresent(),
                        Optional.of(at.place),
                        Optional.of(branch))));
    }

    boolean reaches(PointId point) {
        return best.containsKey(point);
    }

    /** The nearer of a branch's two ends, if the search reaches one. */
    Optional<PointId> nearerEnd(Branch branch) {
        Comparator<PointId> byMetres = Comparator.comparingDouble(point -> visits.get(best.get(point)).metres);
        return List.of(branch.from(), branch.to()).stream()
                .filter(this::reaches)
                .min(byMetres);
    }

    /** The way to a point that the search reaches. */
    FeedWay way(PointId point) {
        List<BranchId> branches = new ArrayList<>();
        Visit last = visits.get(best.get(point));
        Visit visit = last;
        while (visit.over.isPresent()) {
            branches.add(visit.over.get().id());
            visit = visits.get(visit.before.orElseThrow());
        }
        Collections.reverse(branches);
        return new FeedWay(branches, last.known ? OptionalDouble.of(last.metres) : OptionalDouble.empty());
    }

    /** The way to the nearer end of a branch and over it. */
    FeedWay wayOver(Branch branch) {
        PointId near = nearerEnd(branch).orElseThrow();
        FeedWay upTo = way(near);
        List<BranchId> branches = new ArrayList<>(upTo.branches());
        branches.add(branch.id());
        OptionalDouble own = lengths.apply(branch);
        boolean known = own.isPresent() && upTo.lengthMetres().isPresent();
        return new FeedWay(
                branches,
                known
                        ? OptionalDouble.of(upTo.lengthMetres().getAsDouble() + own.getAsDouble())
                        : OptionalDouble.empty());
    }
}
