package org.ohmloom.size.protection;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.FeedSource;
import org.ohmloom.graph.FeedWay;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.Upstream;
import org.ohmloom.model.Battery;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Device;
import org.ohmloom.model.Harness;
import org.ohmloom.solve.Island;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.solve.NetworkSolution;
import org.ohmloom.solve.NetworkSolver;

/**
 * The real network of the harness with a fault as one more branch, solved like any other.
 *
 * <p>Loads draw nothing: those behind the same device would only add to its current, those elsewhere take little of what a
 * fault leaves. Every switch, relay and output on the way from the source to the fault and back is closed, all others are
 * open. What then carries nothing is left out before solving.
 */
final class FaultNetwork {

    /** A bolted fault, ohm: too small to be seen in a result. */
    static final double FAULT_OHMS = 1e-6;

    private static final BranchId FAULT = new BranchId("the fault");

    private final Harness harness;
    private final Network network;
    private final Upstream upstream;
    private final FaultSources laws;
    private final Map<PointId, ReturnSearch> returns = new HashMap<>();
    private final BooleanSupplier cancelled;
    private final List<Branch> branches;
    private final DeadEnds ends;

    /** The law of each branch that has the same in every fault; empty where the fault decides. */
    private final List<Optional<Law>> fixed;

    /**
     * @param network the whole harness with its conductors at the temperature of the condition
     * @param laws    what sources give
     */
    FaultNetwork(Harness harness, Network network, Upstream upstream, FaultSources laws, BooleanSupplier cancelled) {
        this.harness = harness;
        this.network = network;
        this.upstream = upstream;
        this.laws = laws;
        this.cancelled = cancelled;
        branches = List.copyOf(network.branches().values());
        ends = new DeadEnds(branches);
        fixed = branches.stream().map(FaultNetwork::fixed).toList();
    }

    /**
     * The currents of a fault between two points; empty when no source reaches it or the network has no steady state.
     *
     * @param at      the live point
     * @param to      the point it touches
     * @param ohms    resistance between them, ohm, {@link #FAULT_OHMS} for a bolted fault
     * @param sources sources whose way to the fault is closed
     * @param others  whether alternators and supplies run; batteries always do
     */
    Optional<FaultFlows> flows(PointId at, PointId to, double ohms, Collection<FeedSource> sources, boolean others) {
        if (at.equals(to)) {
            return Optional.empty();
        }
        Set<BranchId> closed = new HashSet<>();
        Set<ComponentId> converters = new HashSet<>();
        Set<BranchId> running = new HashSet<>();
        Optional<PointId> datum = Optional.empty();
        for (FeedSource source : sources) {
            Optional<FeedWay> way = upstream.way(source, at);
            Optional<Branch> branch = network.branch(source.branch());
            if (way.isEmpty() || branch.isEmpty()) {
                continue;
            }
            Optional<List<BranchId>> back = returns.computeIfAbsent(
                            branch.get().from(), negative -> new ReturnSearch(network, negative))
                    .way(to);
            if (back.isEmpty()) {
                continue;
            }
            closed.addAll(way.get().branches());
            closed.addAll(back.get());
            running.add(source.branch());
            datum = datum.or(() -> Optional.of(branch.get().from()));
            if (source.converter()) {
                converters.add(source.component());
            }
        }
        return datum.isEmpty()
                ? Optional.empty()
                : solve(at, to, ohms, closed, converters, running, others, datum.get());
    }

    private Optional<FaultFlows> solve(
            PointId at,
            PointId to,
            double ohms,
            Set<BranchId> closed,
            Set<ComponentId> converters,
            Set<BranchId> running,
            boolean others,
            PointId datum) {
        Law[] now = new Law[branches.size()];
        boolean[] carries = new boolean[now.length];
        for (int number = 0; number < now.length; number++) {
            Branch branch = branches.get(number);
            now[number] = fixed.get(number).orElseGet(() -> law(branch, closed, converters, running, others));
            carries[number] = !(now[number] instanceof Law.Open);
        }
        if (!ends.prune(carries, at, to)) {
            return Optional.empty();
        }
        SortedMap<BranchId, Branch> kept = new TreeMap<>();
        for (int number = 0; number < now.length; number++) {
            if (carries[number]) {
                Branch branch = branches.get(number);
                kept.put(
                        branch.id(),
                        new Branch(
                                branch.id(), branch.kind(), branch.from(), branch.to(), branch.element(), now[number]));
            }
        }
        kept.put(FAULT, new Branch(FAULT, BranchKind.JOINT, at, to, Optional.empty(), new Law.Resistance(ohms)));
        SortedSet<PointId> points = new TreeSet<>();
        kept.values().forEach(branch -> points.addAll(List.of(branch.from(), branch.to())));
        points.add(datum);
        NetworkSolution solution =
                NetworkSolver.solve(new Network(network.state(), points, kept, Optional.of(datum)), cancelled);
        String island = solution.islandOf().get(at);
        boolean solved = solution.islands().stream()
                .filter(each -> each.id().equals(island))
                .map(Island::status)
                .anyMatch(status -> status == IslandStatus.SOLVED || status == IslandStatus.FLOATING);
        if (!solved) {
            return Optional.empty();
        }
        SortedMap<BranchId, Double> through = new TreeMap<>();
        solution.flows().forEach((id, flow) -> through.put(id, Math.abs(flow.amps())));
        return Optional.of(new FaultFlows(through.remove(FAULT), through));
    }

    private static Optional<Law> fixed(Branch branch) {
        return switch (branch.kind().part()) {
            case CONDUCTOR, CONTACT -> Optional.of(branch.law());
            case BYPASS -> Optional.of(new Law.Open());
            case DEVICE -> isProtection(branch) ? Optional.of(branch.law()) : Optional.empty();
            case LOAD, SOURCE -> Optional.empty();
        };
    }

    private static boolean isProtection(Branch branch) {
        return switch (branch.kind()) {
            case FUSE, BREAKER, DIODE -> true;
            default -> false;
        };
    }

    private Law law(
            Branch branch, Set<BranchId> closed, Set<ComponentId> converters, Set<BranchId> running, boolean others) {
        Predicate<Set<ComponentId>> isOne = set -> branch.element()
                .filter(ComponentId.class::isInstance)
                .filter(id -> set.contains((ComponentId) id))
                .isPresent();
        return switch (branch.kind().part()) {
            case CONDUCTOR, CONTACT, BYPASS -> throw new IllegalStateException(
                    "the law of " + branch.id() + " is fixed");
            case LOAD -> branch.kind() == BranchKind.REGULATED_INPUT && isOne.test(converters)
                    ? branch.law()
                    : new Law.Open();
            case SOURCE -> branch.kind() == BranchKind.SOURCE
                    ? source(branch, running.contains(branch.id()) || others)
                    : isOne.test(converters) ? branch.law() : new Law.Open();
            case DEVICE -> device(branch, closed.contains(branch.id()));
        };
    }

    private Law source(Branch branch, boolean runs) {
        Device device = branch.element()
                .map(id -> harness.components().get((ComponentId) id).device())
                .orElseThrow();
        return runs || device instanceof Battery ? laws.law(device) : new Law.Open();
    }

    private Law device(Branch branch, boolean onTheWay) {
        return onTheWay ? ClosedOhms.of(harness, branch) : new Law.Open();
    }
}
