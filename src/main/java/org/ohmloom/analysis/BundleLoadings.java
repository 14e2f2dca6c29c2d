package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.graph.Route;
import org.ohmloom.heat.BundleLoading;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.solve.Solution;

/** How full of current the bundles are: the sums MIL-W-5088L reads its curves by. */
final class BundleLoadings {

    private final Bench bench;
    private final Map<SegmentId, List<Wire>> bySegment = new HashMap<>();
    private final Map<WireId, Double> aloneAmps = new HashMap<>();

    BundleLoadings(Bench bench, ProvisionalSizes sizes) {
        this.bench = bench;
        for (Wire wire : bench.harness().wires().all()) {
            aloneAmps.put(wire.id(), bench.ampacities().aloneAmps(wire, sizes.gauge(wire)));
            bench.routes()
                    .of(wire.id())
                    .map(Route::segmentSet)
                    .ifPresent(segments -> segments.forEach(segment -> bySegment
                            .computeIfAbsent(segment, id -> new ArrayList<>())
                            .add(wire)));
        }
    }

    /** The bundle with most wires along a wire, under the currents of a solution; the wire alone where it has no way. */
    BundleLoading of(Wire wire, Solution solution) {
        return bench.routes().of(wire.id()).map(Route::segmentSet).stream()
                .flatMap(segments -> segments.stream().sorted())
                .map(segment -> bySegment.getOrDefault(segment, List.of(wire)))
                .max(Comparator.comparingInt(List::size))
                .map(wires -> loading(wires, solution))
                .orElseGet(() -> loading(List.of(wire), solution));
    }

    private BundleLoading loading(List<Wire> wires, Solution solution) {
        double carried = 0;
        double capacity = 0;
        for (Wire wire : wires) {
            carried += HeatedSolutions.rmsAmps(solution, wire);
            capacity += aloneAmps.get(wire.id());
        }
        return new BundleLoading(wires.size(), capacity > 0 ? Math.min(1, carried / capacity) : 1);
    }
}
