package org.ohmloom.analysis;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.ReturnLoops;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Evidence;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.ConductorChooser;
import org.ohmloom.size.DeviceChoice;
import org.ohmloom.size.DeviceChooser;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.size.SizingInput;
import org.ohmloom.solve.Island;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.charge.ChargeStudy;
import org.ohmloom.solve.run.StartUpStudy;
import org.ohmloom.tables.WireTables;

/**
 * Runs the whole analysis: graph, then for each operating state solve and heat to agreement, then size, then review.
 * <p>Wires without a size are first solved at the largest of their family and then grow from the mechanical minimum until
 * no requirement asks for more, so that their currents and drops are those of the harness they will make.
 */
public final class Analyst {

    /** Most rounds of growing provisional sizes. */
    private static final int MOST_ROUNDS = 12;

    private Analyst() {}

    /**
     * Analyses one snapshot. Safe on any thread; touches nothing but its arguments.
     *
     * @param harness the snapshot
     * @param tables  published tables
     * @param cancel  asks to stop
     * @throws AnalysisRefusedException when the harness names a table entry that is not there
     * @throws CancellationException    when asked to stop
     */
    public static Analysis analyse(Harness harness, WireTables tables, Cancel cancel) {
        Bench bench = Bench.of(harness, tables);
        Protection protection = Protection.of(bench);
        Sized sized = sized(bench, protection, cancel);
        SortedMap<WireId, ConductorChoice> conductors = chooser(bench, protection, sized.heated());
        SortedMap<ComponentId, DeviceChoice> devices =
                new DeviceChooser(input(bench, protection, sized.heated())).chooseAll();
        SortedMap<WireId, WireRating> ratings = Ratings.of(bench, sized.sizes(), sized.heated());
        Evidence evidence = new Evidence(
                harness,
                tables,
                bench.basis(),
                bench.routes(),
                Collections.unmodifiableSortedMap(sized.heated().solutions()),
                Collections.unmodifiableSortedMap(sized.heated().wireCelsius()),
                Collections.unmodifiableSortedMap(ratings),
                conductors,
                devices,
                protection.drawn(),
                ReturnLoops.of(protection.drawn()),
                protection.upstream(),
                StartUpStudy.of(harness, sized.heated().solutions(), tables, cancel::isRequested),
                protection.study(input(bench, protection, sized.heated()), ratings, cancel),
                Envelopes.of(bench, sized.sizes(), sized.heated(), cancel),
                ChargeStudy.of(harness, tables, sized.heated().solutions(), cancel::isRequested));
        return new Analysis(
                evidence,
                FindingOrder.of(evidence, cancel),
                Summing.of(bench, ratings, sized.heated()),
                LogWriter.of(bench, evidence, sized.heated()));
    }

    private record Sized(ProvisionalSizes sizes, HeatedSolutions heated) {}

    private static Sized sized(Bench bench, Protection protection, Cancel cancel) {
        ProvisionalSizes sizes = ProvisionalSizes.largest(bench.harness(), bench.tables(), bench.basis());
        HeatedSolutions heated = HeatedSolutions.solve(bench, sizes, cancel);
        if (bench.harness().wires().all().stream().allMatch(wire -> wire.gauge().isPresent())) {
            return new Sized(sizes, heated);
        }
        sizes = ProvisionalSizes.minimum(bench.harness(), bench.tables(), bench.basis())
                .grow(chooser(bench, protection, heated));
        for (int round = 0; round < MOST_ROUNDS; round++) {
            heated = HeatedSolutions.solve(bench, sizes, cancel);
            ProvisionalSizes grown =
                    sizes.grow(chooser(bench, protection, heated)).oneLarger(unsolved(bench, heated));
            if (grown == sizes) {
                break;
            }
            sizes = grown;
        }
        return new Sized(sizes, heated);
    }

    private static SortedMap<WireId, ConductorChoice> chooser(
            Bench bench, Protection protection, HeatedSolutions heated) {
        return new ConductorChooser(input(bench, protection, heated)).chooseAll();
    }

    private static SizingInput input(Bench bench, Protection protection, HeatedSolutions heated) {
        return new SizingInput(
                bench.harness(),
                bench.tables(),
                bench.basis(),
                bench.routes(),
                heated.solutions(),
                protection.devices());
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
