package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Pulse;
import org.ohmloom.graph.SwitchedLoads;
import org.ohmloom.model.ComponentId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Ripple;
import org.ohmloom.solve.Solution;

/**
 * What an output that switches at a duty does to its feed, its loads and their freewheel paths in one state.
 *
 * @param output branch of the output
 * @param pulse  when it is on
 * @param feed   current through the output itself, which its feed carries
 * @param loads  the loads behind it
 */
public record OutputDuty(BranchId output, Pulse pulse, BranchFlow feed, List<BehindOutput> loads) {

    /**
     * A load behind an output.
     *
     * @param load      the load
     * @param flow      its current
     * @param freewheel current of the diode or clamp that takes over while the output is off, if there is one
     * @param ripple    its current through the period, of an inductive load
     */
    public record BehindOutput(
            ComponentId load, BranchFlow flow, Optional<BranchFlow> freewheel, Optional<Ripple> ripple) {}

    public OutputDuty {
        loads = List.copyOf(loads);
    }

    /** The outputs of a state that switch at a duty, in order. */
    public static List<OutputDuty> of(Solution solution) {
        List<OutputDuty> outputs = new ArrayList<>();
        List<SwitchedLoads.SwitchedLoad> switched =
                solution.duty().clocks().isEmpty() ? List.of() : SwitchedLoads.of(solution.network());
        for (Branch branch : solution.network().branches().values()) {
            if (branch.law() instanceof Law.SwitchedResistance law && SwitchedLoads.isOutput(branch)) {
                List<BehindOutput> loads = new ArrayList<>();
                for (SwitchedLoads.SwitchedLoad each : switched) {
                    if (each.output().equals(branch.id())) {
                        behind(solution, branch, each.load()).ifPresent(loads::add);
                    }
                }
                solution.flow(branch.id())
                        .ifPresent(feed -> outputs.add(new OutputDuty(branch.id(), law.pulse(), feed, loads)));
            }
        }
        return outputs;
    }

    private static Optional<BehindOutput> behind(Solution solution, Branch output, ComponentId load) {
        return solution.network().of(load).stream()
                .filter(branch -> branch.kind() == BranchKind.LOAD)
                .findFirst()
                .flatMap(branch -> solution.flow(branch.id())
                        .map(flow -> new BehindOutput(
                                load,
                                flow,
                                freewheel(solution, output, load),
                                Optional.ofNullable(solution.duty().ripples().get(branch.id())))));
    }

    /** The load's own diode, or what lies beside the output. */
    private static Optional<BranchFlow> freewheel(Solution solution, Branch output, ComponentId load) {
        return solution.network().branches().values().stream()
                .filter(branch -> branch.kind() == BranchKind.FREEWHEEL_DIODE || branch.kind() == BranchKind.CLAMP)
                .filter(branch -> branch.element().filter(load::equals).isPresent()
                        || branch.id().value().startsWith(output.id() + "~")
                        || branch.id().value().startsWith(output.id() + ".")
                                && branch.element().equals(output.element()))
                .flatMap(branch -> solution.flow(branch.id()).stream())
                .filter(flow -> flow.amps() != 0)
                .findFirst();
    }
}
