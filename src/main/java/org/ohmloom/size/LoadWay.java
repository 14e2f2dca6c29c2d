package org.ohmloom.size;

import java.util.List;
import java.util.stream.Stream;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;

/** The wires a load's current passes, feed and return. */
final class LoadWay {

    private LoadWay() {}

    /** The wires from the source to the load and back, each once. */
    static List<Wire> wires(Harness harness, Solution solution, LoadVolts load) {
        return Stream.concat(load.feedPath().stream(), load.returnPath().stream())
                .distinct()
                .flatMap(branch -> solution.flow(branch).stream())
                .map(flow -> flow.branch())
                .filter(branch -> branch.kind() == BranchKind.WIRE)
                .flatMap(branch -> branch.element().stream())
                .map(id -> harness.wires().get((WireId) id))
                .toList();
    }
}
