package org.ohmloom.ground;

import java.util.List;
import org.ohmloom.model.StateId;

/**
 * The voltage of a reference point in one operating state, and who makes it.
 *
 * @param point       the reference point
 * @param state       the operating state
 * @param volts       mean of V(at) - V(reference), V
 * @param rippleVolts amplitude of what switches at a duty: largest departure from the mean, V, 0 or more
 * @param shares      who makes it, largest first; their volts sum to {@code volts}
 */
public record Offset(ReferencePoint point, StateId state, double volts, double rippleVolts, List<OffsetShare> shares) {

    public Offset {
        shares = List.copyOf(shares);
    }

    /** The largest magnitude it reaches, V. */
    public double worstVolts() {
        return Math.abs(volts) + rippleVolts;
    }
}
