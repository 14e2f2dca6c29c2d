package org.ohmloom.size;

import java.util.List;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;

/**
 * How a load's drop budget is spent in a state.
 *
 * @param load       the load
 * @param state      the state
 * @param limitVolts what it may lose in all, V
 * @param otherVolts what contacts, devices, chassis and wires whose size is not open lose, V
 * @param wires      what each wire whose size is open loses, in the order of the way
 */
public record LoadBudget(ComponentId load, StateId state, double limitVolts, double otherVolts, List<WireSpend> wires) {

    public LoadBudget {
        wires = List.copyOf(wires);
    }

    /**
     * What one wire spends.
     *
     * @param wire  the wire
     * @param volts what it loses, V
     */
    public record WireSpend(WireId wire, double volts) {}

    /** What the load loses in all, V. */
    public double spentVolts() {
        return otherVolts + wires.stream().mapToDouble(WireSpend::volts).sum();
    }

    /** What is left of the budget, V; less than 0 when it is overspent. */
    public double leftVolts() {
        return limitVolts - spentVolts();
    }

    /** Whether no more is spent than the limit, but for rounding. */
    public boolean isKept() {
        return VoltageDrop.meets(spentVolts(), limitVolts);
    }

    /** Load and state in a few words. */
    public String id() {
        return load + " in " + state;
    }
}
