package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;

/**
 * Solves a network: currents and voltages of every branch in one operating state.
 *
 * <p>From the outside in: {@link SwitchingSearch} decides relays and fed outputs, {@link IslandSplit} finds the islands,
 * {@link Clock} cuts the periods of what switches into stretches, {@link MomentPlan} combines them to weighted moments, {@link
 * ChokeLevels} finds what inductive loads keep flowing in each; {@link MomentSolver} solves all islands in one moment, {@link
 * IslandSolver} one of them, {@link Newton} its balance, {@link StarMesh} the linear network in it; {@link Tally} adds the moments
 * up. Between the edges everything but the inductive loads is taken as settled.
 */
public final class NetworkSolver {

    private final Network network;
    private final SwitchingSearch search;
    private final FullTrial full;
    private final Trial trial;
    private final List<Island> islands = new ArrayList<>();
    private final SortedMap<PointId, String> islandOf = new TreeMap<>();
    private final SortedMap<PointId, Double> volts = new TreeMap<>();
    private final SortedMap<BranchId, OnMoment> onMoments = new TreeMap<>();
    private final SortedMap<BranchId, BranchFlow> flows = new TreeMap<>();

    private NetworkSolver(Network network, RestMemory memory, BooleanSupplier cancelled) {
        this.network = network;
        search = new SwitchingSearch(network, memory, cancelled);
        full = search.settle();
        trial = full.trial();
    }

    /**
     * Solves a network.
     *
     * @param network   the network
     * @param cancelled asked now and then; true stops the solution
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public static NetworkSolution solve(Network network, BooleanSupplier cancelled) {
        return solve(network, new RestMemory(), cancelled);
    }

    /** The same, begun where a much like network came to rest; keeps its own rest there. */
    static NetworkSolution solve(Network network, RestMemory memory, BooleanSupplier cancelled) {
        return searched(network, memory, cancelled).result();
    }

    /**
     * The finished search, for what only a few means are wanted of. The result may be asked for while no other network was begun
     * from the same memory.
     */
    static NetworkSolver searched(Network network, RestMemory memory, BooleanSupplier cancelled) {
        return new NetworkSolver(network, memory, cancelled);
    }

    /** Whether a point lies in the powered island of a branch. */
    boolean together(BranchId branch, PointId point) {
        return trial.circuitOf(branch).filter(circuit -> circuit.holds(point)).isPresent();
    }

    /** Mean current of a branch that is no resistance, A; empty where its island has no solution. */
    OptionalDouble meanAmps(BranchId branch) {
        Optional<Tally> tally = solvedTally(branch);
        return tally.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(tally.get()
                        .meanAmps(tally.get().circuit().number(branch))
                        .value());
    }

    /** Mean of V(from) - V(to) of a branch whose island has a solution, V. */
    double meanDropVolts(BranchId branch) {
        Tally tally = solvedTally(branch).orElseThrow();
        Circuit circuit = tally.circuit();
        return circuit.along(circuit.number(branch), tally.meanVolts()).value();
    }

    /** Mean voltage of a point in the island of a branch, V; empty where that has no solution or not that point. */
    OptionalDouble meanVolts(BranchId branch, PointId point) {
        Optional<Tally> tally =
                solvedTally(branch).filter(each -> each.circuit().holds(point));
        return tally.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        tally.get().meanVolts().value(tally.get().circuit().number(point)));
    }

    private Optional<Tally> solvedTally(BranchId branch) {
        return trial.islandOf(branch)
                .filter(island -> trial.failure(island).isEmpty() && !isRestless(island))
                .flatMap(full::tally);
    }

    private boolean isRestless(int island) {
        return !search.buzzing().isEmpty()
                && network.branches().values().stream()
                        .filter(branch -> search.buzzing(branch).isPresent())
                        .anyMatch(branch -> trial.islands().get(island).points().stream()
                                .anyMatch(point -> point.equals(branch.from()) || point.equals(branch.to())));
    }

    /** What is published of the search. */
    NetworkSolution result() {
        for (IslandPart part : trial.islands()) {
            part.points().forEach(point -> islandOf.put(point, part.id()));
        }
        Map<String, Failure> restless = restless();
        Optional<PointId> main = trial.islands().stream()
                .filter(IslandPart::isMain)
                .flatMap(part -> part.datum().stream())
                .findFirst();
        for (int number = 0; number < trial.islands().size(); number++) {
            IslandPart part = trial.islands().get(number);
            Optional<Failure> failure =
                    Optional.ofNullable(restless.get(part.id())).or(failureOf(number));
            if (part.powered() && failure.isEmpty()) {
                failure = publish(number, part);
            }
            islands.add(IslandSentence.of(part, failure, main));
        }
        nothingElsewhere();
        return new NetworkSolution(network, islands, islandOf, volts, onMoments, flows, DutyReport.of(full, flows));
    }

    private Supplier<Optional<Failure>> failureOf(int island) {
        return () -> trial.failure(island);
    }

    /** Islands with a relay or fed output that found no rest. */
    private Map<String, Failure> restless() {
        Map<String, Failure> restless = new HashMap<>();
        for (Branch branch : network.branches().values()) {
            search.buzzing(branch).ifPresent(failure -> {
                restless.putIfAbsent(islandOf.get(branch.from()), failure);
                restless.putIfAbsent(islandOf.get(branch.to()), failure);
            });
        }
        return restless;
    }

    /** Publishes an island, unless the check of its numbers fails. */
    private Optional<Failure> publish(int number, IslandPart part) {
        Tally tally = full.tally(number).orElseThrow();
        IslandAverage average = new IslandAverage(network, part.id(), tally);
        List<BranchFlow> own = average.flows();
        SortedMap<PointId, Double> ownVolts = new TreeMap<>();
        put(tally.circuit(), average.meanVolts(), ownVolts);
        ResidualCheck check = ResidualCheck.of(own, ownVolts);
        if (!check.isWithinTolerances()) {
            return Optional.of(Failure.unbalanced(check));
        }
        volts.putAll(ownVolts);
        onMoments.putAll(full.onMoments(number));
        own.forEach(flow -> flows.put(flow.branch().id(), flow));
        return Optional.empty();
    }

    private static void put(Circuit circuit, double[] values, Map<PointId, Double> target) {
        target.put(circuit.datum(), 0.0);
        for (int point = 0; point < values.length; point++) {
            target.put(circuit.points().get(point), values[point]);
        }
    }

    /** Branches without current: open ones, and all in islands without a solution. */
    private void nothingElsewhere() {
        Set<BranchId> silent = new HashSet<>(network.branches().keySet());
        silent.removeAll(flows.keySet());
        for (BranchId id : silent) {
            Branch branch = network.branches().get(id);
            String island = islandOf.get(branch.from());
            boolean together = island.equals(islandOf.get(branch.to()));
            double drop = together ? difference(branch, volts) : 0;
            flows.put(id, new BranchFlow(branch, island, OptionalDouble.empty(), 0, 0, 0, drop, drop, 0));
        }
    }

    private static double difference(Branch branch, Map<PointId, Double> volts) {
        Double from = volts.get(branch.from());
        Double to = volts.get(branch.to());
        return from == null || to == null ? 0 : from - to;
    }
}
