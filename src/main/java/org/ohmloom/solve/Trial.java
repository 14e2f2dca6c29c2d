package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Network;

/** The network solved through the whole period with its relays and fed outputs held as they are. */
final class Trial {

    private final List<Branch> branches;
    private final List<IslandPart> islands;
    private final List<Optional<Circuit>> circuits = new ArrayList<>();
    private final List<Period> periods;

    /** For each stretch of the period the result of each island. */
    private final List<List<Optional<IslandMoment>>> moments = new ArrayList<>();

    private final List<Moment> solved = new ArrayList<>();

    private final Map<BranchId, Integer> islandOfBranch = new HashMap<>();

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
        periods = Period.of(branches.stream().map(Branch::law).toList());
        for (IslandPart island : islands) {
            island.branches().forEach(branch -> islandOfBranch.put(branch.id(), circuits.size()));
            circuits.add(
                    island.datum().map(datum -> new Circuit(datum, island.points(), island.branches(), cancelled)));
        }
        for (int period = 0; period < periods.size(); period++) {
            Moment moment = new Moment(circuits, periods.get(period), hint(period, earlier), cancelled);
            moments.add(moment.solve());
            solved.add(moment);
        }
    }

    /** The same stretch in the trial before, or else the stretch before. */
    private Optional<Moment> hint(int period, Optional<Trial> earlier) {
        Optional<Moment> same =
                earlier.filter(trial -> trial.periods.equals(periods)).map(trial -> trial.solved.get(period));
        return period == 0 ? same : same.or(() -> Optional.of(solved.get(period - 1)));
    }

    /** All branches with the laws of this trial. */
    List<Branch> branches() {
        return branches;
    }

    /** The islands in order. */
    List<IslandPart> islands() {
        return islands;
    }

    /** The stretches of the period. */
    List<Period> periods() {
        return periods;
    }

    /** The circuit of an island that is powered. */
    Optional<Circuit> circuit(int island) {
        return circuits.get(island);
    }

    /** The first reason an island has no solution, if it has none. */
    Optional<Failure> failure(int island) {
        return moments.stream()
                .flatMap(moment -> moment.get(island).stream())
                .flatMap(result -> result.failure().stream())
                .findFirst();
    }

    /** The results of a powered island, one for each stretch of the period. */
    List<IslandMoment> moments(int island) {
        return moments.stream().flatMap(moment -> moment.get(island).stream()).toList();
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
        double mean = 0;
        for (int period = 0; period < periods.size(); period++) {
            Precise[] volts = moments.get(period).get(island).get().volts();
            mean += periods.get(period).shareFraction()
                    * circuit.along(circuit.number(branch), volts).value();
        }
        return OptionalDouble.of(mean);
    }
}
