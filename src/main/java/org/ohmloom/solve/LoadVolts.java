package org.ohmloom.solve;

import java.util.List;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.ComponentId;

/**
 * What reaches one load in one operating state. feedDropVolts + returnDropVolts = source volts - volts; all means but
 * the on-state values, by which the drop is judged.
 *
 * @param load             the load
 * @param reference        the source its drop is measured from
 * @param amps             mean current, A
 * @param volts            mean voltage at its terminals, V
 * @param feedDropVolts    V(source +) - V(load +), V
 * @param returnDropVolts  V(load -) - V(source -), V
 * @param contactDropVolts portion of both lost in contacts and joints along the way of the largest current, V
 * @param deviceDropVolts  portion of both lost in fuses, switches, relays and outputs along that way, V
 * @param on               the same in its own on-state, at the worst
 * @param limitVolts       allowed total drop, V
 * @param feedPath         branches from the source's positive terminal to the load, along the largest current
 * @param returnPath       branches from the load back to the source's negative terminal
 */
public record LoadVolts(
        ComponentId load,
        ComponentId reference,
        double amps,
        double volts,
        double feedDropVolts,
        double returnDropVolts,
        double contactDropVolts,
        double deviceDropVolts,
        OnState on,
        double limitVolts,
        List<BranchId> feedPath,
        List<BranchId> returnPath) {

    /**
     * What reaches a load in its own on-state: of the moments in which it is on, the one with the least voltage left for it;
     * the same as the means when nothing switches at a duty.
     *
     * @param amps             current, A
     * @param volts            voltage at its terminals, V
     * @param feedDropVolts    V(source +) - V(load +), V
     * @param returnDropVolts  V(load -) - V(source -), V
     * @param contactDropVolts portion of both lost in contacts and joints, V
     * @param deviceDropVolts  portion of both lost in fuses, switches, relays and outputs, V
     */
    public record OnState(
            double amps,
            double volts,
            double feedDropVolts,
            double returnDropVolts,
            double contactDropVolts,
            double deviceDropVolts) {}

    public LoadVolts {
        feedPath = List.copyOf(feedPath);
        returnPath = List.copyOf(returnPath);
    }

    /** Feed and return together, mean, V. */
    public double dropVolts() {
        return feedDropVolts + returnDropVolts;
    }

    /** Voltage at its terminals in its own on-state, V. */
    public double onVolts() {
        return on.volts();
    }

    /** Feed and return together in its own on-state, V; what is judged against the limit. */
    public double onDropVolts() {
        return on.feedDropVolts() + on.returnDropVolts();
    }
}
