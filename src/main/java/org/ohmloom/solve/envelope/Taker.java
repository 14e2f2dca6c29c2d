package org.ohmloom.solve.envelope;

import java.util.Optional;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.ComponentId;

/**
 * Something that takes current when it is fed: a load, a coil, a control unit, a sensor, the input of a supply.
 *
 * @param branch   its branch
 * @param needs    what must be so that current reaches it
 * @param current  what it takes, in the on-state
 * @param isExact  whether that law is its own; otherwise the current is the largest a named state shows
 * @param isPulsed whether it is switched at a duty
 * @param rmsRatio its RMS current is at most this share of the on-state current, 0 to 1
 */
record Taker(Branch branch, Needs needs, TakenCurrent current, boolean isExact, boolean isPulsed, double rmsRatio) {
    BranchId id() {
        return branch.id();
    }

    PointId from() {
        return branch.from();
    }

    PointId to() {
        return branch.to();
    }

    /** Whether its current is known only as named states show it: an inductive load on an output that switches. */
    boolean isSeen() {
        return !isExact && isPulsed && load().isPresent();
    }

    /** The load it is; empty for coils, control units, sensors and supplies. */
    Optional<ComponentId> load() {
        return branch.kind() == BranchKind.LOAD
                ? branch.element().filter(ComponentId.class::isInstance).map(ComponentId.class::cast)
                : Optional.empty();
    }
}
