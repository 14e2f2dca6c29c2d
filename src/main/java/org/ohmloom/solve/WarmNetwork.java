package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.words.Text;

/**
 * One network solved again and again while the laws of some of its branches change, each time from the voltages before:
 * what a run over time needs. The same search as {@link NetworkSolver} at a small part of its cost.
 *
 * <p>Every law must be that of the moment: relay contacts closed or open, outputs with a duty on or off. A branch that is
 * open when the network is handed over stays out of it; one that carries nothing for a while is set to {@link Law.Open}
 * later. Not safe for use by two threads at once.
 */
public final class WarmNetwork {

    private static final int MOST_ROUNDS = 100;

    private final List<WarmPart> parts = new ArrayList<>();
    private final Map<BranchId, WarmPart> partOfBranch = new HashMap<>();
    private final Map<PointId, WarmPart> partOfPoint = new HashMap<>();
    private Outputs outputs = new Outputs();
    private long solutions;

    /**
     * Takes over a network; nothing is solved yet.
     *
     * @param network   the network, every law that of the moment
     * @param cancelled asked now and then; true stops the solution
     */
    public WarmNetwork(Network network, BooleanSupplier cancelled) {
        for (IslandPart island : IslandSplit.of(network, network.all())) {
            if (island.datum().isPresent()) {
                WarmPart part = new WarmPart(
                        new Circuit(island.datum().get(), island.points(), island.branches(), cancelled), cancelled);
                parts.add(part);
                island.branches().forEach(branch -> partOfBranch.put(branch.id(), part));
                island.points().forEach(point -> partOfPoint.put(point, part));
            }
        }
    }

    /** Changes the law of a branch for the solutions to come; one that no source feeds is left alone. */
    public void set(BranchId branch, Law law) {
        WarmPart part = partOfBranch.get(branch);
        if (part != null) {
            part.set(branch, law);
        }
    }

    /**
     * Solves with the laws as they are now.
     *
     * @return why there is no solution; empty when there is one
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public Optional<Text> solve() {
        solutions++;
        parts.forEach(part -> part.solve(outputs));
        Optional<Branch> unsettled = settle();
        Optional<Failure> failure = parts.stream()
                .flatMap(part -> part.failure().stream())
                .findFirst()
                .or(() -> unsettled.map(Failure::circling));
        return failure.map(Failure::sentence);
    }

    /** Repeats the parts with converters until outputs and inputs agree; the input that does not come to rest. */
    private Optional<Branch> settle() {
        for (int round = 0; ; round++) {
            Outputs before = outputs;
            Outputs now = new Outputs();
            parts.forEach(part -> part.give(now));
            Optional<Branch> unsettled = parts.stream()
                    .flatMap(part -> part.unsettled(before, now).stream())
                    .findFirst();
            outputs = now;
            if (unsettled.isEmpty() || round == MOST_ROUNDS) {
                return unsettled;
            }
            parts.stream().filter(WarmPart::hasInputs).forEach(part -> part.solve(now));
        }
    }

    /** How many times it was solved. */
    public long solutions() {
        return solutions;
    }

    /** V(from) - V(to) of a branch after {@link #solve}, V; 0 where no source feeds it. */
    public double volts(BranchId branch) {
        WarmPart part = partOfBranch.get(branch);
        return part == null ? 0 : part.along(branch);
    }

    /** Current of a branch from {@code from} to {@code to} after {@link #solve}, A; 0 where no source feeds it. */
    public double amps(BranchId branch) {
        WarmPart part = partOfBranch.get(branch);
        return part == null ? 0 : part.amps(branch);
    }

    /** V(from) - V(to) of two points after {@link #solve}, V; 0 where no one source feeds both. */
    public double volts(PointId from, PointId to) {
        WarmPart part = partOfPoint.get(from);
        return part == null || part != partOfPoint.get(to) ? 0 : part.volts(from) - part.volts(to);
    }
}
