package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;

/**
 * The network with its relays and fed outputs held as they are, moment by moment. A trial is first only looked at, by {@link
 * RestingMoments}; once relays are at rest it is solved in full, by {@link FullTrial}.
 */
final class Trial {

    /** Passes with more moments are not remembered: each moment then starts from the one before it. */
    private static final int MOST_REMEMBERED = 300;

    private final Network network;
    private final List<Branch> branches;
    private final SortedSet<PointId> watched;
    private final List<IslandPart> islands;
    private final List<Clock> clocks;
    private final List<Optional<Circuit>> circuits = new ArrayList<>();
    private final List<Optional<Failure>> failures = new ArrayList<>();
    private final Map<BranchId, Integer> islandOfBranch;
    private final MomentSolver solver;
    private final Map<BranchId, Double> restingVolts = new HashMap<>();
    private final Optional<ChokeLevels> remembered;
    private Optional<ChokeLevels> levels = Optional.empty();
    private List<Optional<IslandMoment>> results = List.of();
    private List<List<Optional<IslandMoment>>> before = List.of();
    private List<List<Optional<IslandMoment>>> pass = List.of();
    private List<List<Optional<IslandMoment>>> looked = List.of();

    /**
     * Prepares the moments of a network.
     *
     * @param network   the network
     * @param switching what relays and fed outputs do
     * @param earlier   the trial before, for its voltages as a hint
     * @param cancelled asks to stop
     */
    Trial(Network network, Switching switching, Optional<Trial> earlier, BooleanSupplier cancelled) {
        this.network = network;
        branches = switching.branches(network);
        watched = network.index().watched();
        Optional<Trial> alike =
                earlier.filter(trial -> IslandSplit.isAlike(trial.network, trial.branches, network, branches));
        if (alike.isPresent()) {
            islandOfBranch = alike.get().islandOfBranch;
            islands = IslandSplit.withLawsOf(branches, alike.get().islands, islandOfBranch);
            for (int number = 0; number < islands.size(); number++) {
                List<Branch> own = islands.get(number).branches();
                circuits.add(alike.get().circuits.get(number).map(circuit -> circuit.withLawsOf(own)));
            }
        } else {
            islandOfBranch = new HashMap<>();
            islands = IslandSplit.of(network, branches);
            for (IslandPart island : islands) {
                island.branches().forEach(branch -> islandOfBranch.put(branch.id(), circuits.size()));
                circuits.add(
                        island.datum().map(datum -> new Circuit(datum, island.points(), island.branches(), cancelled)));
            }
        }
        islands.forEach(island -> failures.add(Optional.empty()));
        clocks = Clock.of(branches.stream()
                .filter(branch -> circuitOf(branch.id()).isPresent())
                .toList());
        solver = new MomentSolver(circuits, clocks, earlier.map(trial -> trial.solver), cancelled);
        remembered = earlier.flatMap(Trial::levels);
        earlier.filter(this::isLike).ifPresent(trial -> {
            pass = trial.pass;
            looked = trial.looked;
        });
    }

    /** Whether another trial has the same points in the same islands, and the same clocks. */
    private boolean isLike(Trial other) {
        return clocks.equals(other.clocks)
                && (islandOfBranch == other.islandOfBranch || points().equals(other.points()));
    }

    private List<List<PointId>> points() {
        return circuits.stream()
                .map(circuit -> circuit.map(Circuit::points).orElse(List.of()))
                .toList();
    }

    /** The levels of inductive loads in the trial before. */
    Optional<ChokeLevels> remembered() {
        return remembered;
    }

    /** Whether an island has no solution. */
    boolean hasFailed() {
        return failures.stream().anyMatch(Optional::isPresent);
    }

    /** Looks at the means of some branches, with inductive loads at their running points. */
    Trial look(Iterable<BranchId> watched) {
        RestingMoments few = RestingMoments.of(uncut());
        List<List<Optional<IslandMoment>>> near = looked.size() == few.moments().size() ? looked : List.of();
        looked = new ArrayList<>();
        roughly(true);
        for (int number = 0; number < few.moments().size(); number++) {
            if (number < near.size()) {
                solver.startFrom(near.get(number));
            }
            solve(few.moments().get(number));
            looked.add(List.copyOf(results));
            double weight = few.weights().get(number);
            for (BranchId branch : watched) {
                Optional<Reading> reading = reading(branch);
                reading.ifPresent(each -> restingVolts.merge(branch, weight * each.volts(), Double::sum));
            }
        }
        roughly(false);
        return this;
    }

    /**
     * Mean of V(from) - V(to) of a branch that was looked at, V; 0 without power.
     *
     * @return empty where the island could not be solved
     */
    OptionalDouble restingVolts(BranchId branch) {
        Integer island = islandOfBranch.get(branch);
        if (island == null || circuits.get(island).isEmpty()) {
            return OptionalDouble.of(0);
        }
        return failure(island).isPresent()
                ? OptionalDouble.empty()
                : OptionalDouble.of(restingVolts.getOrDefault(branch, 0.0));
    }

    /** Forgets failures that only a look has found. */
    void forgive() {
        failures.replaceAll(failure -> Optional.empty());
        solver.forgive();
    }

    /** The stretches of all clocks as they are. */
    List<List<Part>> uncut() {
        return clocks.stream()
                .map(clock -> Part.of(clock, stretch -> new TreeSet<Double>()))
                .toList();
    }

    /** Solves from now on no more exactly than a search needs, or to the last digit again. */
    void roughly(boolean rough) {
        solver.roughly(rough);
    }

    /** Solves a moment. */
    void solve(List<Part> at) {
        results = solver.solve(at, levels);
        for (int island = 0; island < results.size(); island++) {
            if (failures.get(island).isEmpty()) {
                failures.set(island, results.get(island).flatMap(IslandMoment::failure));
            }
        }
    }

    /**
     * Solves a moment of a pass over all of them, from the voltages it had in the pass before if that had as many.
     *
     * @param number number of the moment
     * @param count  count of all moments
     * @param at     the part each clock is in
     */
    void solve(int number, int count, List<Part> at) {
        if (number == 0) {
            before = pass.size() == count ? pass : List.of();
            pass = new ArrayList<>();
        }
        if (number < before.size()) {
            solver.startFrom(before.get(number));
        }
        solve(at);
        if (count <= MOST_REMEMBERED) {
            pass.add(List.copyOf(results));
        }
    }

    /** Comes back to a moment of the pass just ended. */
    void solveAgain(int number, List<Part> at) {
        if (number < pass.size()) {
            results = pass.get(number);
        } else {
            solve(at);
        }
    }

    /** The moment just solved in an island, unless it has failed. */
    Optional<IslandMoment> good(int island) {
        return failures.get(island).isPresent() ? Optional.empty() : results.get(island);
    }

    /** Voltage along a branch and its current in one moment. */
    record Reading(double volts, double amps) {}

    /** Voltage and current of a branch in the moment just solved; empty without power or solution. */
    Optional<Reading> reading(BranchId id) {
        Integer island = islandOfBranch.get(id);
        if (island == null) {
            return Optional.empty();
        }
        return circuits.get(island).flatMap(circuit -> good(island).map(moment -> {
            int branch = circuit.number(id);
            return new Reading(
                    circuit.along(branch, moment.volts()).value(), moment.amps().value(branch));
        }));
    }

    /** What the ripple of each inductive load does to an island in the moment just solved. */
    List<RippleFlow> ripple(int island, List<Part> at) {
        if (levels.isEmpty() || good(island).isEmpty()) {
            return List.of();
        }
        Circuit circuit = circuits.get(island).orElseThrow();
        SortedMap<Integer, double[]> kept = new TreeMap<>();
        List<Choke> chokes = levels.get().chokes();
        for (int number = 0; number < chokes.size(); number++) {
            BranchId id = chokes.get(number).id();
            double amps = chokes.get(number).rippleAmps(at);
            if (amps != 0 && islandOfBranch.get(id) == island) {
                double[] change = new double[circuit.branches().size()];
                change[circuit.number(id)] = amps;
                kept.put(number, change);
            }
        }
        return solver.answers(island, kept).stream()
                .map(each -> each.withPeakRatio(chokes.get(each.choke()).peakRatio(at)))
                .toList();
    }

    /** Solves with inductive loads at their running points from now on. */
    void useNone() {
        levels = Optional.empty();
    }

    /** Keeps nothing but voltages and what was awake at them. */
    void keepVolts() {
        useNone();
        solver.forgetOutputs();
    }

    /** Solves with these levels from now on. */
    void use(ChokeLevels found) {
        levels = Optional.of(found);
    }

    /** Gives an island up. */
    void fail(int island, Failure failure) {
        failures.set(island, failures.get(island).or(() -> Optional.of(failure)));
    }

    /** The points whose voltage matters in every moment. */
    SortedSet<PointId> watched() {
        return watched;
    }

    /** All branches with the laws of this trial. */
    List<Branch> branches() {
        return branches;
    }

    /** The islands in order. */
    List<IslandPart> islands() {
        return islands;
    }

    /** Count of branches that are solved in each moment. */
    int solvedBranches() {
        return circuits.stream()
                .flatMap(Optional::stream)
                .mapToInt(circuit -> circuit.branches().size())
                .sum();
    }

    /** The circuit of each island that is powered. */
    List<Optional<Circuit>> circuits() {
        return circuits;
    }

    /** The clocks of what switches in powered islands. */
    List<Clock> clocks() {
        return clocks;
    }

    /** The levels of inductive loads, where there are any in a network in which something switches. */
    Optional<ChokeLevels> levels() {
        return levels;
    }

    /** The first reason an island has no solution, if it has none. */
    Optional<Failure> failure(int island) {
        return failures.get(island);
    }

    /** Number of the island a branch conducts in. */
    Optional<Integer> islandOf(BranchId branch) {
        return Optional.ofNullable(islandOfBranch.get(branch));
    }

    /** The circuit of a branch, if it is powered. */
    Optional<Circuit> circuitOf(BranchId branch) {
        return islandOf(branch).flatMap(circuits::get);
    }
}
