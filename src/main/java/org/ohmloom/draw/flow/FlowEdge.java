package org.ohmloom.draw.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.PointId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;

/**
 * A way between two nodes without a fork: wires with the contacts and joints at their ends, in order.
 *
 * @param from  where it begins, on the side current comes from where it is largest
 * @param to    where it ends
 * @param start point at its beginning
 * @param end   point at its end
 * @param steps what it consists of, in order; never empty
 */
record FlowEdge(FlowNode from, FlowNode to, PointId start, PointId end, List<Step> steps) {

    /**
     * A branch on the way.
     *
     * @param branch  the branch
     * @param forward whether the way follows it from its {@code from} to its {@code to}
     */
    record Step(Branch branch, boolean forward) {

        Step reversed() {
            return new Step(branch, !forward);
        }

        PointId end() {
            return forward ? branch.to() : branch.from();
        }

        /** Whether it is a mated contact. */
        boolean isContact() {
            return branch.kind() == BranchKind.CONTACT;
        }

        /** Whether it is a conductor with a length, which is drawn as a band. */
        boolean isConductor() {
            return branch.kind().part() == BranchKind.Part.CONDUCTOR;
        }
    }

    FlowEdge {
        steps = List.copyOf(steps);
    }

    /** The same way the other way round. */
    FlowEdge reversed() {
        List<Step> back = new ArrayList<>();
        for (int k = steps.size() - 1; k >= 0; k--) {
            back.add(steps.get(k).reversed());
        }
        return new FlowEdge(to, from, end, start, back);
    }

    /** The flow of its conductor, or of its first step where it has none; none where the state has no solution there. */
    Optional<BranchFlow> flow(Solution solution) {
        return solution.flow(lead().branch().id());
    }

    /** The step that stands for it. */
    Step lead() {
        return steps.stream().filter(Step::isConductor).findFirst().orElse(steps.get(0));
    }

    /** Its mean current in its direction, A; 0 where there is none. */
    double amps(Solution solution) {
        double amps = flow(solution).map(BranchFlow::amps).orElse(0.0);
        return lead().forward() ? amps : -amps;
    }
}
