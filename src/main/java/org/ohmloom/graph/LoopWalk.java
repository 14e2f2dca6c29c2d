package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Branches in order around a loop, each with the point it is entered at. */
final class LoopWalk {
    private final List<Branch> branches = new ArrayList<>();
    private final List<PointId> starts = new ArrayList<>();

    void add(Branch branch, PointId start) {
        branches.add(branch);
        starts.add(start);
    }

    List<Branch> branches() {
        return Collections.unmodifiableList(branches);
    }

    /** The point the last branch leads to. */
    PointId end() {
        int last = branches.size() - 1;
        return Adjacency.across(branches.get(last), starts.get(last));
    }

    /** The loop, starting with its first member in natural order and going on to the lesser of the two beside it. */
    ReturnLoop toLoop() {
        List<BranchId> members =
                new ArrayList<>(branches.stream().map(Branch::id).toList());
        List<PointId> points = new ArrayList<>(starts);
        rotate(members, points);
        int last = members.size() - 1;
        if (last > 1 && members.get(last).compareTo(members.get(1)) < 0) {
            Collections.reverse(members);
            Collections.reverse(points);
            // walked the other way, a branch is entered where the one after it was entered before
            Collections.rotate(points, 1);
            rotate(members, points);
        }
        return new ReturnLoop(members, points);
    }

    private static void rotate(List<BranchId> members, List<PointId> points) {
        int first = members.indexOf(Collections.min(members));
        Collections.rotate(members, -first);
        Collections.rotate(points, -first);
    }
}
