package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.ground.Attribution;
import org.ohmloom.ground.Causes;
import org.ohmloom.model.Harness;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;

/**
 * One state of a changed harness as it is foreseen: every load and source keeps the current it was solved to, and only the
 * ways those currents take change. What a change of the returns does to a voltage or a current is then a sum over them
 * (superposition, {@link Attribution}), a solution of plain resistances instead of a search.
 *
 * <p>The more a change alters the currents of the loads, the less this holds; what is foreseen decides only what is tried.
 *
 * @param harness   the changed harness
 * @param network   its network in the state
 * @param solved    the state as it was solved before the change
 * @param causes    who makes the current of a branch
 * @param cancelled asked now and then; true stops the work
 */
record ChangedState(Harness harness, Network network, Solution solved, Causes causes, BooleanSupplier cancelled) {

    /** Everything as it is. */
    Attribution attribution() {
        return attribution(Optional.empty(), false);
    }

    /** With one branch opened and every load at its on-state current. */
    Attribution opened(BranchId branch) {
        return attribution(Optional.of(branch), true);
    }

    /** Every load at its on-state current. */
    Attribution on() {
        return attribution(Optional.empty(), true);
    }

    private Attribution attribution(Optional<BranchId> opened, boolean on) {
        List<BranchFlow> flows = new ArrayList<>();
        for (Branch branch : network.branches().values()) {
            if (!opened.equals(Optional.of(branch.id()))) {
                held(branch, on).ifPresent(flows::add);
            }
        }
        return Attribution.of(network.points(), network.datum(), flows, cancelled);
    }

    private Optional<BranchFlow> held(Branch branch, boolean on) {
        Optional<BranchFlow> before = solved.flow(branch.id());
        boolean wasOhmic = before.map(flow -> flow.ohms().isPresent()).orElse(true);
        if (branch.law() instanceof Law.Resistance resistance && wasOhmic) {
            return Optional.of(flow(branch, "", OptionalDouble.of(resistance.ohms()), 0, 0));
        }
        return before.map(
                flow -> flow(branch, flow.island(), flow.ohms(), on ? flow.onAmps() : flow.amps(), flow.dropVolts()));
    }

    private static BranchFlow flow(Branch branch, String island, OptionalDouble ohms, double amps, double volts) {
        return new BranchFlow(branch, island, ohms, amps, amps, amps, volts, volts, 0);
    }
}
