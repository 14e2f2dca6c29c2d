package org.ohmloom.analysis;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.ConductorChooser;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.size.Settling;
import org.ohmloom.size.SizingInput;
import org.ohmloom.solve.Island;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.solve.Solution;

/**
 * Solved states with a size for every wire, each wire's chosen by itself: wires without a size are first solved at the
 * largest of their family and then grow from the mechanical minimum until no requirement asks for more.
 *
 * @param sizes  the sizes
 * @param heated the states solved with them
 * @param chosen what each wire needs by itself there, once somebody has asked
 */
record SizesByWire(ProvisionalSizes sizes, HeatedSolutions heated, ChosenAlone chosen) {

    /** Most rounds of growing provisional sizes. */
    private static final int MOST_ROUNDS = 12;

    SizesByWire(ProvisionalSizes sizes, HeatedSolutions heated) {
        this(sizes, heated, new ChosenAlone());
    }

    static SizesByWire of(Bench bench, Protection protection) {
        ProvisionalSizes sizes = ProvisionalSizes.largest(bench.harness(), bench.tables(), bench.basis());
        HeatedSolutions heated = HeatedSolutions.solve(bench, sizes);
        if (bench.harness().wires().all().stream().allMatch(wire -> wire.gauge().isPresent())) {
            return new SizesByWire(sizes, heated);
        }
        sizes = ProvisionalSizes.minimum(bench.harness(), bench.tables(), bench.basis())
                .grow(new SizesByWire(sizes, heated).choices(bench, protection));
        for (int round = 0; round < MOST_ROUNDS; round++) {
            SizesByWire now = new SizesByWire(sizes, HeatedSolutions.solve(bench, sizes));
            ProvisionalSizes grown =
                    sizes.grow(now.choices(bench, protection)).oneLarger(unsolved(bench, now.heated()));
            if (grown == sizes) {
                return now;
            }
            heated = now.heated();
            sizes = grown;
        }
        return new SizesByWire(sizes, heated);
    }

    /** The chooser on these states. */
    ConductorChooser chooser(Bench bench, Protection protection) {
        return chosen.chooser(() -> input(bench, protection, heated, sizes));
    }

    /** What each wire needs by itself in these states. */
    SortedMap<WireId, ConductorChoice> choices(Bench bench, Protection protection) {
        return chosen.choices(() -> input(bench, protection, heated, sizes));
    }

    /** What choices on states solved with those sizes rest on. */
    static SizingInput input(Bench bench, Protection protection, HeatedSolutions heated, ProvisionalSizes sizes) {
        return new SizingInput(
                bench.harness(),
                bench.tables(),
                bench.basis(),
                bench.routes(),
                heated.solutions(),
                protection.devices(),
                Optional.of(new Settling(bench.bundleHeat(), sizes::gauge)),
                bench.cancel()::check);
    }

    /** Wires in a part of the network that asks for more than it can bring, in some state. */
    private static List<WireId> unsolved(Bench bench, HeatedSolutions heated) {
        Set<WireId> wires = new TreeSet<>();
        for (Solution solution : heated.solutions().values()) {
            Set<String> overloaded = solution.islands().stream()
                    .filter(island -> island.status() == IslandStatus.OVERLOADED)
                    .map(Island::id)
                    .collect(Collectors.toSet());
            for (Wire wire : bench.harness().wires().all()) {
                solution.flow(new BranchId(wire.id().value()))
                        .filter(flow -> overloaded.contains(flow.island()))
                        .ifPresent(flow -> wires.add(wire.id()));
            }
        }
        return List.copyOf(wires);
    }
}
