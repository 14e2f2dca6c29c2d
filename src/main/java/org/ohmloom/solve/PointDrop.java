package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.PointId;

/**
 * The mean voltage between two points of one state, told apart along one way between them. By Kirchhoff's voltage law every way
 * gives the same sum; this one goes through conductors, contacts and closed devices that carry current as far as it can, through
 * idle ones before it goes through what is open, through that before a load, and through a source last; of equal ways the one
 * with the larger currents.
 *
 * @param from     where the way begins
 * @param to       where it ends
 * @param solution the state
 * @param volts    V(from) - V(to), V
 * @param parts    the branches on the way in order; empty where both are one point or nothing joins them
 */
public record PointDrop(PointId from, PointId to, Solution solution, double volts, List<Part> parts) {

    private static final double CARRIES_AMPS = 1e-6;

    /**
     * A branch on the way.
     *
     * @param flow      the branch with its currents and voltages
     * @param amps      mean current in the direction of the way, A
     * @param dropVolts mean voltage lost in the direction of the way, V; below 0 where current comes against it, and in sources
     */
    public record Part(BranchFlow flow, double amps, double dropVolts) {}

    public PointDrop {
        parts = List.copyOf(parts);
    }

    /** The share of a part in the whole; empty where there is no voltage to share. */
    public OptionalDouble share(Part part) {
        return volts == 0 ? OptionalDouble.empty() : OptionalDouble.of(part.dropVolts() / volts);
    }

    /** The voltage between two points; empty where one of them has none in this state. */
    public static Optional<PointDrop> between(PointId from, PointId to, Solution solution) {
        OptionalDouble one = solution.volts(from);
        OptionalDouble other = solution.volts(to);
        return one.isEmpty() || other.isEmpty()
                ? Optional.empty()
                : Optional.of(new PointDrop(
                        from, to, solution, one.getAsDouble() - other.getAsDouble(), way(from, to, solution)));
    }

    /** Whether the way leads across something open, so that the voltage is no drop of a current. */
    public boolean isOpen() {
        return parts.stream()
                .anyMatch(part -> part.flow().branch().kind().part() == BranchKind.Part.DEVICE
                        && part.flow().ohms().isEmpty()
                        && Math.abs(part.amps()) <= CARRIES_AMPS);
    }

    /**
     * The largest voltage between two points, either way round, in the states that close the way between them; in any state where
     * none does. Of equal ones the first.
     */
    public static Optional<PointDrop> largest(PointId from, PointId to, Collection<Solution> solutions) {
        return solutions.stream()
                .flatMap(solution -> between(from, to, solution).stream())
                .reduce((one, other) -> isLarger(other, one) ? other : one);
    }

    private static boolean isLarger(PointDrop one, PointDrop other) {
        return one.isOpen() == other.isOpen() ? Math.abs(one.volts) > Math.abs(other.volts) : other.isOpen();
    }

    private record Reached(PointId point, double costRatio) {}

    /** The cheapest way by Dijkstra's method. */
    private static List<Part> way(PointId from, PointId to, Solution solution) {
        Map<PointId, List<BranchFlow>> at = new HashMap<>();
        for (BranchFlow flow : solution.flows().values()) {
            at.computeIfAbsent(flow.branch().from(), point -> new ArrayList<>()).add(flow);
            at.computeIfAbsent(flow.branch().to(), point -> new ArrayList<>()).add(flow);
        }
        Map<PointId, Double> costs = new HashMap<>(Map.of(from, 0.0));
        Map<PointId, BranchFlow> by = new HashMap<>();
        PriorityQueue<Reached> waiting = new PriorityQueue<>(
                Comparator.comparingDouble(Reached::costRatio).thenComparing(Reached::point));
        waiting.add(new Reached(from, 0));
        while (!waiting.isEmpty()) {
            Reached here = waiting.remove();
            if (here.point().equals(to)) {
                break;
            }
            if (here.costRatio() > costs.getOrDefault(here.point(), 0.0)) {
                continue;
            }
            for (BranchFlow flow : at.getOrDefault(here.point(), List.of())) {
                PointId there = other(flow.branch(), here.point());
                double cost = here.costRatio() + cost(flow);
                if (cost < costs.getOrDefault(there, Double.POSITIVE_INFINITY)) {
                    costs.put(there, cost);
                    by.put(there, flow);
                    waiting.add(new Reached(there, cost));
                }
            }
        }
        LinkedList<Part> parts = new LinkedList<>();
        for (PointId here = to; by.containsKey(here) && !here.equals(from); ) {
            BranchFlow flow = by.get(here);
            boolean along = flow.branch().to().equals(here);
            parts.addFirst(
                    new Part(flow, along ? flow.amps() : -flow.amps(), along ? flow.dropVolts() : -flow.dropVolts()));
            here = other(flow.branch(), here);
        }
        return parts;
    }

    private static PointId other(Branch branch, PointId one) {
        return branch.from().equals(one) ? branch.to() : branch.from();
    }

    /** What it costs to go through a branch; the last part tells equal ways apart by their currents. */
    private static double cost(BranchFlow flow) {
        double bySort =
                switch (flow.branch().kind().part()) {
                    case CONDUCTOR, CONTACT, DEVICE -> Math.abs(flow.amps()) > CARRIES_AMPS
                            ? 1
                            : flow.ohms().isPresent() ? 1e3 : 1e6;
                    case LOAD -> 1e9;
                    case BYPASS -> 1e10;
                    case SOURCE -> 1e12;
                };
        return bySort + 1e-4 / (1 + Math.abs(flow.amps()));
    }
}
