package org.ohmloom.size.protection;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.graph.Adjacency;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;

/**
 * Ways from any point back to a source's negative terminal, over as few devices as possible: conductors and contacts count
 * nothing, switches, relay contacts, outputs and protective devices one each. Diodes and sources are not passed.
 */
final class ReturnSearch {
    private final Map<PointId, Branch> towards = new HashMap<>();
    private final PointId negative;

    ReturnSearch(Network network, PointId negative) {
        this.negative = negative;
        Adjacency passages =
                Adjacency.of(network, branch -> branch.kind().isPassage() && branch.kind() != BranchKind.DIODE);
        Set<PointId> done = new HashSet<>();
        Deque<PointId> open = new ArrayDeque<>(List.of(negative));
        while (!open.isEmpty()) {
            PointId point = open.removeFirst();
            if (!done.add(point)) {
                continue;
            }
            for (Branch branch : passages.at(point)) {
                PointId before = Adjacency.across(branch, point);
                if (done.contains(before) || !leads(branch, before)) {
                    continue;
                }
                if (branch.kind().part() == BranchKind.Part.DEVICE) {
                    towards.putIfAbsent(before, branch);
                    open.addLast(before);
                } else {
                    towards.put(before, branch);
                    open.addFirst(before);
                }
            }
        }
    }

    /** Outputs pass current one way only. */
    private static boolean leads(Branch branch, PointId from) {
        boolean oneWay = branch.kind() == BranchKind.OUTPUT_PIN || branch.kind() == BranchKind.SOLID_STATE_OUTPUT;
        return !oneWay || branch.from().equals(from);
    }

    /** The branches from a point to the negative terminal; empty when there is no way. */
    Optional<List<BranchId>> way(PointId point) {
        List<BranchId> branches = new ArrayList<>();
        PointId at = point;
        while (!at.equals(negative)) {
            Branch branch = towards.get(at);
            if (branch == null || branches.size() > towards.size()) {
                return Optional.empty();
            }
            branches.add(branch.id());
            at = Adjacency.across(branch, at);
        }
        return Optional.of(Collections.unmodifiableList(branches));
    }
}
