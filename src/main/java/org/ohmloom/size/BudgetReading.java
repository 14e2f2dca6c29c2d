package org.ohmloom.size;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.ohmloom.graph.BranchId;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;

/** Reads from solved states how each load's drop budget is spent by the wires whose size is open. */
final class BudgetReading {

    /**
     * A budget and the currents behind it.
     *
     * @param budget  the budget as it is spent
     * @param rmsAmps of each wire of the budget the current that heats it, A, in the same order; 0 in a state that does not
     *                last, where wires stay at ambient
     * @param ohms    of each its resistance as it was solved, ohm
     */
    record Read(LoadBudget budget, List<Double> rmsAmps, List<Double> ohms) {

        /** Place of a wire in the budget. */
        int place(WireId wire) {
            for (int k = 0; k < budget.wires().size(); k++) {
                if (budget.wires().get(k).wire().equals(wire)) {
                    return k;
                }
            }
            throw new IllegalArgumentException(wire + " spends nothing of " + budget.id());
        }
    }

    private BudgetReading() {}

    /** The budgets of all loads that draw, by state and load. */
    static List<Read> of(SizingInput input, Predicate<Wire> open) {
        List<Read> budgets = new ArrayList<>();
        Set<StateId> lasting = ContinuousStates.of(input.harness());
        input.solutions().forEach((state, solution) -> solution.loads().values().stream()
                .filter(load -> LoadWay.isJudged(input.harness(), load))
                .forEach(load ->
                        budgets.add(read(input.harness(), state, solution, load, open, lasting.contains(state)))));
        return budgets;
    }

    private static Read read(
            Harness harness, StateId state, Solution solution, LoadVolts load, Predicate<Wire> open, boolean lasts) {
        double other = load.onDropVolts();
        List<LoadBudget.WireSpend> spends = new ArrayList<>();
        List<Double> rmsAmps = new ArrayList<>();
        List<Double> ohms = new ArrayList<>();
        for (Wire wire : LoadWay.wires(harness, solution, load)) {
            BranchFlow flow = solution.flow(new BranchId(wire.id().value())).orElseThrow();
            if (open.test(wire) && flow.onAmps() != 0) {
                double volts = Math.abs(flow.onDropVolts());
                spends.add(new LoadBudget.WireSpend(wire.id(), volts));
                ohms.add(volts / Math.abs(flow.onAmps()));
                rmsAmps.add(lasts ? Math.abs(flow.rmsAmps()) : 0.0);
                other -= volts;
            }
        }
        return new Read(new LoadBudget(load.load(), state, load.limitVolts(), other, spends), rmsAmps, ohms);
    }
}
