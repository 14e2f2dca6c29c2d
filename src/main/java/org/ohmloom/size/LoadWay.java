package org.ohmloom.size;

import java.util.List;
import java.util.stream.Stream;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;

/** The wires a load's current passes, feed and return. */
final class LoadWay {

    /** A load that draws less than this share of its rated current is off, and what it draws leaks through something. */
    private static final double LEAK_SHARE = 0.01;

    private LoadWay() {}

    /** Whether the drop of a load is to be kept within its limit: it draws, and not only what leaks through. */
    static boolean isJudged(Harness harness, LoadVolts load) {
        return load.amps() != 0
                && harness.components()
                        .find(load.load())
                        .map(component -> component.device())
                        .filter(Load.class::isInstance)
                        .map(device -> ((Load) device).draw().ratedAmps())
                        .filter(ratedAmps -> load.on().amps() < LEAK_SHARE * ratedAmps)
                        .isEmpty();
    }

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
