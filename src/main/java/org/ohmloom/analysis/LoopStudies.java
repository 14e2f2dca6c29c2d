package org.ohmloom.analysis;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.FoundLoops;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.ReturnLoops;
import org.ohmloom.ground.LoopInput;
import org.ohmloom.ground.LoopStudy;
import org.ohmloom.heat.WireRating;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.model.WireId;

/** Finds the loops of the return network with the lengths of the wires, and reads them off the solutions. */
final class LoopStudies {

    private LoopStudies() {}

    static LoopStudy of(Bench bench, Network drawn, HeatedSolutions heated, SortedMap<WireId, WireRating> ratings) {
        FoundLoops found = ReturnLoops.of(drawn, branch -> lengthMetres(branch, ratings));
        return LoopStudy.of(
                new LoopInput(bench.harness(), drawn, found, bench.routes(), shapes(bench, ratings)),
                heated.solutions(),
                bench.cancel()::isRequested);
    }

    /** The round wires, by their size and insulation. */
    static Map<WireId, RoundWire> shapes(Bench bench, SortedMap<WireId, WireRating> ratings) {
        Map<WireId, RoundWire> shapes = new TreeMap<>();
        ratings.forEach((id, rating) -> shapes.put(
                id, bench.ampacities().shape(rating.wire(), rating.gauge()).wire()));
        return shapes;
    }

    /** Length of a wire, m; 0 where it is not known, and for straps and joints, which have none. */
    private static double lengthMetres(Branch branch, SortedMap<WireId, WireRating> ratings) {
        boolean isWire = branch.kind() == BranchKind.WIRE || branch.kind() == BranchKind.SHIELD;
        return branch.element()
                .filter(id -> isWire && id instanceof WireId)
                .map(id -> ratings.get((WireId) id).lengthMetres().orElse(0))
                .orElse(0.0);
    }
}
