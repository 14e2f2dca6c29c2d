package org.ohmloom.solve.run;

import org.ohmloom.graph.BranchId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ElectronicLimit;

/**
 * An output whose electronic limit holds the current of a start down.
 *
 * @param component      the control unit or electronic switch
 * @param branch         its branch
 * @param limit          its limit
 * @param limitedSeconds how long it gives its limit, s
 * @param stillLimits    whether it still does at the end of the run
 */
public record LimitedOutput(
        ComponentId component, BranchId branch, ElectronicLimit limit, double limitedSeconds, boolean stillLimits) {

    /** Whether it switches off before what starts is running. */
    public boolean trips() {
        return limit.tripSeconds().isPresent()
                && (stillLimits || limitedSeconds > limit.tripSeconds().getAsDouble());
    }
}
