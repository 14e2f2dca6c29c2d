package org.ohmloom.ground;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.SwitchedLoads;
import org.ohmloom.ground.sensor.Unjudged;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Formats;

/**
 * The offset of every reference point in every state, and who makes it.
 *
 * @param offsets  by reference point, then by state
 * @param unjudged what could not be divided or was not tried
 */
public record Offsets(List<Offset> offsets, List<Unjudged> unjudged) {

    /** Most shares of loads in offsets of one harness: offsets times what draws current. */
    static final int MOST_SHARES = 200_000;

    private static final int LEAST_DIVIDED = 40;

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
        Set<Unjudged> unjudged = new LinkedHashSet<>();
        SortedMap<StateId, Reader> readers = new TreeMap<>();
        solutions.forEach((state, solution) -> readers.put(state, Reader.of(switched, solution, cancelled)));
        double least = leastDividedVolts(points, readers, most(drawn));
        for (ReferencePoint point : points) {
            readers.forEach((state, reader) -> reader.read(point, state, least).ifPresent(offsets::add));
            boolean apart = readers.values().stream().anyMatch(reader -> reader.isApart(point, least));
            if (apart) {
                unjudged.add(Unjudged.of(
                        Unjudged.Study.OFFSETS,
                        Unjudged.Reason.NOT_JOINED,
                        ReturnTexts.text("offsets.apart"),
                        List.of(point.owner(), point.against())));
            }
        }
        if (least > 0) {
            unjudged.add(Unjudged.of(
                    Unjudged.Study.OFFSETS,
                    Unjudged.Reason.TOO_MUCH_WORK,
                    ReturnTexts.text("offsets.small", Formats.volts(least)),
                    List.of()));
        }
        return SwitchedOff.tried(harness, solutions, new Offsets(offsets, List.copyOf(unjudged)), cancelled);
    }

    /** How many offsets of so large a network are divided. */
    private static int most(Network drawn) {
        long draws = drawn.branches().values().stream()
                .filter(branch -> branch.kind() == BranchKind.LOAD || branch.kind() == BranchKind.PRESENT_LOAD)
                .count();
        return (int) Math.max(LEAST_DIVIDED, MOST_SHARES / Math.max(1, draws));
    }

    /** The size of the last offset that is still divided, V; 0 when all are. */
    private static double leastDividedVolts(List<ReferencePoint> points, SortedMap<StateId, Reader> readers, int most) {
        double[] sizes = points.stream()
                .flatMap(point -> readers.values().stream().flatMap(reader -> reader.volts(point).stream()))
                .mapToDouble(Math::abs)
                .sorted()
                .toArray();
        return sizes.length <= most ? 0 : sizes[sizes.length - most];
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

        boolean isApart(ReferencePoint point, double leastDividedVolts) {
            return volts(point)
                            .filter(volts -> Math.abs(volts) >= leastDividedVolts)
                            .isPresent()
                    && attribution.ofVolts(point.at(), point.reference()).isEmpty();
        }

        Optional<Offset> read(ReferencePoint point, StateId state, double leastDividedVolts) {
            return volts(point)
                    .flatMap(volts -> Math.abs(volts) < leastDividedVolts
                            ? Optional.of(offset(point, state, volts, List.of()))
                            : attribution
                                    .ofVolts(point.at(), point.reference())
                                    .map(parts -> offset(point, state, volts, shares.of(parts))));
        }

        private Offset offset(ReferencePoint point, StateId state, double volts, List<OffsetShare> divided) {
            double departure = solution.duty()
                    .momentVolts()
                    .departure(point.at(), point.reference(), volts)
                    .orElse(0);
            return new Offset(point, state, volts, departure, divided);
        }
    }
}
