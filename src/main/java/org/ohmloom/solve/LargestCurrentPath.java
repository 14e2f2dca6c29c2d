package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.PointId;

/**
 * Follows the largest current from a load to the source it comes from, and from the load to the source it goes back to.
 *
 * <p>At each point the branch with the largest current of the moment goes next, ties by branch order, until that branch is a
 * source. No point is visited twice, so a path always ends; where it ends without a source there is none.
 */
final class LargestCurrentPath {

    private final Map<PointId, List<BranchFlow>> flowsAt = new HashMap<>();
    private final OnMoment moment;

    /**
     * Prepares paths through the currents of a moment.
     *
     * @param flows  the branches
     * @param moment their currents
     */
    LargestCurrentPath(Collection<BranchFlow> flows, OnMoment moment) {
        this.moment = moment;
        for (BranchFlow flow : flows) {
            if (amps(flow) != 0) {
                flowsAt.computeIfAbsent(flow.branch().from(), point -> new ArrayList<>())
                        .add(flow);
                flowsAt.computeIfAbsent(flow.branch().to(), point -> new ArrayList<>())
                        .add(flow);
            }
        }
    }

    /**
     * A path that ended at a source.
     *
     * @param flows  the branches in the order they were followed, without the load and the source
     * @param source the source
     * @param moment the moment it was followed in
     */
    record Found(List<BranchFlow> flows, Branch source, OnMoment moment) {

        Found {
            flows = List.copyOf(flows);
        }

        /** Sum of the mean drops along the branches of one part, in the direction of the current, V. */
        double dropVolts(BranchKind.Part part) {
            return sum(part, BranchFlow::dropVolts);
        }

        /** The same in the moment, V. */
        double onDropVolts(BranchKind.Part part) {
            return sum(
                    part,
                    flow -> moment.volts().get(flow.branch().from())
                            - moment.volts().get(flow.branch().to()));
        }

        private double sum(BranchKind.Part part, ToDoubleFunction<BranchFlow> drop) {
            return flows.stream()
                    .filter(flow -> flow.branch().kind().part() == part)
                    .mapToDouble(flow -> Math.copySign(1, moment.amps(flow.branch())) * drop.applyAsDouble(flow))
                    .sum();
        }
    }

    private double amps(BranchFlow flow) {
        return moment.amps(flow.branch());
    }

    /** The way the current of a load comes, from the load back to a source. */
    Optional<Found> feeding(Branch load, PointId positive) {
        return follow(load, positive, true, Optional.empty());
    }

    /**
     * The way the current of a load goes, from the load on to a source; the negative terminal of the source it came from
     * ends it in any case.
     */
    Optional<Found> returning(Branch load, PointId negative, Optional<Branch> cameFrom) {
        return follow(load, negative, false, cameFrom);
    }

    private Optional<Found> follow(Branch load, PointId start, boolean upstream, Optional<Branch> cameFrom) {
        List<BranchFlow> path = new ArrayList<>();
        Set<PointId> visited = new HashSet<>();
        PointId at = start;
        while (visited.add(at)) {
            PointId here = at;
            if (cameFrom.map(Branch::from).equals(Optional.of(here))) {
                return cameFrom.map(source -> new Found(path, source, moment));
            }
            Optional<BranchFlow> next = flowsAt.getOrDefault(here, List.of()).stream()
                    .filter(flow -> !flow.branch().equals(load))
                    .filter(flow ->
                            upstream ? head(flow).equals(here) : tail(flow).equals(here))
                    .filter(flow -> isSource(flow) || !visited.contains(upstream ? tail(flow) : head(flow)))
                    .max(Comparator.comparingDouble((BranchFlow flow) -> Math.abs(amps(flow)))
                            .thenComparing(flow -> flow.branch().id(), Comparator.reverseOrder()));
            if (next.isEmpty()) {
                return Optional.empty();
            }
            if (isSource(next.get())) {
                return Optional.of(new Found(path, next.get().branch(), moment));
            }
            path.add(next.get());
            at = upstream ? tail(next.get()) : head(next.get());
        }
        return Optional.empty();
    }

    /** A source that gives; one that is charged takes current in at its positive terminal and is passed by. */
    private boolean isSource(BranchFlow flow) {
        return flow.branch().kind().part() == BranchKind.Part.SOURCE && amps(flow) > 0;
    }

    private PointId tail(BranchFlow flow) {
        return amps(flow) > 0 ? flow.branch().from() : flow.branch().to();
    }

    private PointId head(BranchFlow flow) {
        return amps(flow) > 0 ? flow.branch().to() : flow.branch().from();
    }
}
