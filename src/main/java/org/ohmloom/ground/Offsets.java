package org.ohmloom.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.SwitchedLoads;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.Solution;

/**
 * The offset of every reference point in every state, and who makes it.
 *
 * @param offsets  by reference point, then by state
 * @param unjudged what could not be divided or was not tried, a sentence each
 */
public record Offsets(List<Offset> offsets, List<String> unjudged) {

    public Offsets {
        offsets = List.copyOf(offsets);
        unjudged = List.copyOf(unjudged);
    }

    /**
     * Studies a harness.
     *
     * @param harness   the harness
     * @param drawn     its network with nothing switched on
     * @param solutions solution of every state
     * @param cancelled asked now and then; true stops the work
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public static Offsets of(
            Harness harness, Network drawn, SortedMap<StateId, Solution> solutions, BooleanSupplier cancelled) {
        List<ReferencePoint> points = ReferencePoints.of(drawn, harness);
        if (points.isEmpty()) {
            return new Offsets(List.of(), List.of());
        }
        List<SwitchedLoads.SwitchedLoad> switched = SwitchedLoads.of(drawn);
        List<Offset> offsets = new ArrayList<>();
        TreeSet<String> unjudged = new TreeSet<>();
        SortedMap<StateId, Reader> readers = new TreeMap<>();
        solutions.forEach((state, solution) -> readers.put(state, Reader.of(switched, solution, cancelled)));
        for (ReferencePoint point : points) {
            readers.forEach((state, reader) -> reader.read(point, state).ifPresent(offsets::add));
            boolean apart = readers.values().stream().anyMatch(reader -> reader.isApart(point));
            if (apart) {
                unjudged.add("The offset of " + point.owner() + " against " + point.against()
                        + " is not judged where no conductor joins the two.");
            }
        }
        return SwitchedOff.tried(harness, solutions, new Offsets(offsets, List.copyOf(unjudged)), cancelled);
    }

    /** Reads offsets off one solution. */
    private record Reader(Solution solution, Attribution attribution, OffsetShares shares) {

        static Reader of(List<SwitchedLoads.SwitchedLoad> switched, Solution solution, BooleanSupplier cancelled) {
            return new Reader(
                    solution,
                    Attribution.of(solution, cancelled),
                    new OffsetShares(solution, Causes.of(switched, solution)));
        }

        private Optional<Double> volts(ReferencePoint point) {
            OptionalDouble at = solution.volts(point.at());
            OptionalDouble reference = solution.volts(point.reference());
            boolean together = solution.islandOf()
                    .getOrDefault(point.at(), "")
                    .equals(solution.islandOf().get(point.reference()));
            return together && at.isPresent() && reference.isPresent()
                    ? Optional.of(at.getAsDouble() - reference.getAsDouble())
                    : Optional.empty();
        }

        boolean isApart(ReferencePoint point) {
            return volts(point).isPresent()
                    && attribution.ofVolts(point.at(), point.reference()).isEmpty();
        }

        Optional<Offset> read(ReferencePoint point, StateId state) {
            return volts(point).flatMap(volts -> attribution
                    .ofVolts(point.at(), point.reference())
                    .map(parts -> new Offset(
                            point,
                            state,
                            volts,
                            solution.duty()
                                    .momentVolts()
                                    .departure(point.at(), point.reference(), volts)
                                    .orElse(0),
                            shares.of(parts))));
        }
    }
}
