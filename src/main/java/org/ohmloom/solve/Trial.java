package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Network;

/** The network solved through all its moments with its relays and fed outputs held as they are. */
final class Trial {

    private static final int MOST_PASSES = 60;

    /** Miss of the voltages of inductive loads at which the search ends, as a share of the highest voltage. */
    private static final double SETTLED_RATIO = 1e-11;

    /** Miss that is still a solution when the search gets no nearer. */
    private static final double NEARLY_SETTLED_RATIO = 1e-6;

    /** The same where a sample of the moments stands for all of them and moves with the levels. */
    private static final double SAMPLED_SETTLED_RATIO = 1e-4;

    private static final double LEAST_SCALE_VOLTS = 1;

    private final List<Branch> branches;
    private final List<IslandPart> islands;
    private final List<Clock> clocks;
    private final List<Optional<Circuit>> circuits = new ArrayList<>();
    private final List<Optional<Failure>> failures = new ArrayList<>();
    private final List<Optional<Tally>> tallies = new ArrayList<>();
    private final List<Optional<LoadMoments>> loadMoments = new ArrayList<>();
    private final Map<BranchId, Integer> islandOfBranch = new HashMap<>();
    private final MomentSolver solver;
    private Optional<ChokeLevels> levels = Optional.empty();
    private Optional<LevelReadings> readings = Optional.empty();
    private MomentPlan plan;
    private double scaleVolts = LEAST_SCALE_VOLTS;

    private interface Visit {
        void moment(List<Part> at, double share, int number, List<Optional<IslandMoment>> results);
    }

    /**
     * Solves.
     *
     * @param network   the network
     * @param switching what relays and fed outputs do
     * @param earlier   the trial before, for its voltages as a hint
     * @param cancelled asks to stop
     */
    Trial(Network network, Switching switching, Optional<Trial> earlier, BooleanSupplier cancelled) {
        branches = switching.branches(network);
        islands = IslandSplit.of(network, branches);
        for (IslandPart island : islands) {
            island.branches().forEach(branch -> islandOfBranch.put(branch.id(), circuits.size()));
            circuits.add(
                    island.datum().map(datum -> new Circuit(datum, island.points(), island.branches(), cancelled)));
            failures.add(Optional.empty());
        }
        clocks = Clock.of(branches.stream()
                .filter(branch -> circuitOf(branch.id()).isPresent())
                .toList());
        solver = new MomentSolver(circuits, clocks, earlier.map(trial -> trial.solver), cancelled);
        plan = new MomentPlan(uncut());
        if (!clocks.isEmpty()) {
            levels = findLevels();
            levels.ifPresent(each -> plan = new MomentPlan(each.parts()));
        }
        tally();
    }

    private List<List<Part>> uncut() {
        return clocks.stream()
                .map(clock -> Part.of(clock, stretch -> new TreeSet<Double>()))
                .toList();
    }

    private Optional<Circuit> circuitOf(BranchId branch) {
        return Optional.ofNullable(islandOfBranch.get(branch)).flatMap(circuits::get);
    }

    /** Solves all moments of the plan, and hands them out as long as an island has a solution. */
    private void walk(Visit visit) {
        for (int number = 0; number < plan.count(); number++) {
            List<Part> at = plan.at(number);
            solve(at);
            visit.moment(at, plan.weight(number), number, results);
        }
    }

    private List<Optional<IslandMoment>> results = List.of();

    private void solve(List<Part> at) {
        results = solver.solve(at, levels);
        for (int island = 0; island < results.size(); island++) {
            if (failures.get(island).isEmpty()) {
                failures.set(island, results.get(island).flatMap(IslandMoment::failure));
            }
        }
    }

    private Optional<IslandMoment> good(int island) {
        return failures.get(island).isPresent() ? Optional.empty() : results.get(island);
    }

    /** The levels of inductive loads and capacitors at which they balance; empty when there are none. */
    private Optional<ChokeLevels> findLevels() {
        List<Branch> stores = branches.stream()
                .filter(branch -> Characteristics.isStore(branch.law()))
                .filter(branch -> circuitOf(branch.id()).isPresent())
                .toList();
        if (stores.isEmpty()) {
            return Optional.empty();
        }
        Map<BranchId, ClockReading> resting = new HashMap<>();
        stores.forEach(branch -> resting.put(branch.id(), new ClockReading(clocks)));
        walk((at, share, number, moments) -> {
            for (Branch branch : stores) {
                int island = islandOfBranch.get(branch.id());
                Circuit circuit = circuits.get(island).orElseThrow();
                good(island)
                        .ifPresent(moment -> resting.get(branch.id())
                                .add(
                                        at,
                                        share,
                                        circuit.along(circuit.number(branch.id()), moment.volts())
                                                .value()));
            }
        });
        resting.values().forEach(each -> scaleVolts = Math.max(scaleVolts, each.largest()));
        levels = Optional.of(new ChokeLevels(stores, resting, clocks));
        if (!levels.get().isEmpty()) {
            search(levels.get());
        }
        return levels;
    }

    private void search(ChokeLevels search) {
        double miss = Double.POSITIVE_INFINITY;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            plan = new MomentPlan(search.parts());
            LevelReadings seen = search.readings();
            walk((at, share, number, moments) -> read(search, seen, at, share));
            readings = Optional.of(seen);
            miss = search.move(seen) / scaleVolts;
            if (miss <= (plan.isSampled() ? SAMPLED_SETTLED_RATIO : SETTLED_RATIO)) {
                return;
            }
        }
        if (miss > (plan.isSampled() ? Math.sqrt(SAMPLED_SETTLED_RATIO) : NEARLY_SETTLED_RATIO)) {
            for (Choke choke : search.chokes()) {
                int island = islandOfBranch.get(choke.id());
                Circuit circuit = circuits.get(island).orElseThrow();
                Branch branch = circuit.branches().get(circuit.number(choke.id()));
                failures.set(island, failures.get(island).or(() -> Optional.of(Failure.restless(branch))));
            }
        }
    }

    private void read(ChokeLevels search, LevelReadings seen, List<Part> at, double share) {
        for (int number = 0; number < seen.chokes().size(); number++) {
            BranchId id = search.chokes().get(number).id();
            ChokeReading reading = seen.chokes().get(number);
            reading(id, (volts, amps) -> reading.add(at, share, volts, amps));
        }
        for (int number = 0; number < seen.reservoirs().size(); number++) {
            ClockReading reading = seen.reservoirs().get(number);
            reading(search.reservoirs().get(number).id(), (volts, amps) -> reading.add(at, share, amps));
        }
    }

    private interface Pair {
        void of(double volts, double amps);
    }

    private void reading(BranchId id, Pair pair) {
        int island = islandOfBranch.get(id);
        Circuit circuit = circuits.get(island).orElseThrow();
        int branch = circuit.number(id);
        good(island)
                .ifPresent(moment -> pair.of(
                        circuit.along(branch, moment.volts()).value(), moment.amps()[branch].value()));
    }

    private void tally() {
        int moments = plan.count() + (plan.isSampled() ? 1 : 0);
        for (Optional<Circuit> circuit : circuits) {
            tallies.add(circuit.map(each -> new Tally(each, clocks, plan)));
            loadMoments.add(circuit.map(each -> new LoadMoments(each, moments)));
        }
        walk((at, share, number, results) -> add(at, share, number));
        if (plan.isSampled()) {
            List<Part> at = coincidence();
            solve(at);
            add(at, 0, plan.count());
        }
    }

    private void add(List<Part> at, double share, int number) {
        for (int island = 0; island < circuits.size(); island++) {
            int each = island;
            good(island).ifPresent(moment -> {
                tallies.get(each).orElseThrow().add(at, share, plan.replicate(number), moment);
                loadMoments.get(each).orElseThrow().add(number, moment);
            });
        }
    }

    /** Every clock where most of its outputs are on: a sample may have missed that they all are. */
    private List<Part> coincidence() {
        List<List<Part>> parts = levels.map(ChokeLevels::parts).orElseGet(this::uncut);
        List<Part> at = new ArrayList<>();
        for (int clock = 0; clock < clocks.size(); clock++) {
            List<Stretch> stretches = clocks.get(clock).stretches();
            Part most = parts.get(clock).get(0);
            for (Part part : parts.get(clock)) {
                if (stretches.get(part.stretch()).on().size()
                        > stretches.get(most.stretch()).on().size()) {
                    most = part;
                }
            }
            at.add(most);
        }
        return at;
    }

    /** The islands in order. */
    List<IslandPart> islands() {
        return islands;
    }

    /** The clocks of what switches in powered islands. */
    List<Clock> clocks() {
        return clocks;
    }

    /** The plan of the moments. */
    MomentPlan plan() {
        return plan;
    }

    /** The levels of inductive loads, where there are any in a network in which something switches. */
    Optional<ChokeLevels> levels() {
        return levels;
    }

    /** What the last pass of the search showed of inductive loads. */
    Optional<LevelReadings> readings() {
        return readings;
    }

    /** The first reason an island has no solution, if it has none. */
    Optional<Failure> failure(int island) {
        return failures.get(island);
    }

    /** What the moments of a powered island add up to. */
    Optional<Tally> tally(int island) {
        return tallies.get(island);
    }

    /** The moment by which the drop of each load of an island is judged. */
    Map<BranchId, OnMoment> onMoments(int island) {
        Circuit circuit = circuits.get(island).orElseThrow();
        Tally tally = tallies.get(island).orElseThrow();
        LoadMoments moments = loadMoments.get(island).orElseThrow();
        Map<Integer, OnMoment> solved = new HashMap<>();
        Map<BranchId, OnMoment> byLoad = new HashMap<>();
        for (int load = 0; load < moments.loads().size(); load++) {
            int branch = moments.loads().get(load);
            int worst = moments.worst(load, tally.meanAmps(branch).value() < 0 ? -1 : 1);
            OnMoment moment = solved.computeIfAbsent(worst, number -> {
                List<Part> at = number < plan.count() ? plan.at(number) : coincidence();
                return solver.solve(at, levels).get(island).stream()
                        .filter(result -> result.failure().isEmpty())
                        .map(result -> OnMoment.of(circuit, result))
                        .findFirst()
                        .orElse(new OnMoment(Map.of(), Map.of()));
            });
            byLoad.put(circuit.branches().get(branch).id(), moment);
        }
        return byLoad;
    }

    /**
     * Mean of V(from) - V(to) of a branch, V; 0 without power.
     *
     * @return empty where the island could not be solved
     */
    OptionalDouble meanVolts(BranchId branch) {
        Integer island = islandOfBranch.get(branch);
        if (island == null || circuits.get(island).isEmpty()) {
            return OptionalDouble.of(0);
        }
        if (failure(island).isPresent()) {
            return OptionalDouble.empty();
        }
        Circuit circuit = circuits.get(island).get();
        Tally tally = tallies.get(island).orElseThrow();
        return OptionalDouble.of(
                circuit.along(circuit.number(branch), tally.meanVolts()).value());
    }
}
