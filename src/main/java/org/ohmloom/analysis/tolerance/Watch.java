package org.ohmloom.analysis.tolerance;

import java.util.OptionalDouble;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.StateId;

/**
 * A result that is followed through all runs.
 *
 * @param measure what it is
 * @param subject whose it is
 * @param state   the operating state it is of
 * @param limit   what it must keep, in the unit of the measure; empty where nobody says
 */
public record Watch(Measure measure, ElementId subject, StateId state, OptionalDouble limit) {

    /** Whether a value does not keep the limit; false without one. */
    boolean isBeyond(double value) {
        return limit.isPresent() && (measure.isFloor() ? value < limit.getAsDouble() : value > limit.getAsDouble());
    }
}
