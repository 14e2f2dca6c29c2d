package org.ohmloom.graph;

import java.util.Optional;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ElementId;

/** How current passes from sources along feeds, whatever is switched on: the rules the feed searches share. */
final class FeedRules {

    private FeedRules() {}

    static boolean isProtective(Branch branch) {
        return branch.kind() == BranchKind.FUSE || branch.kind() == BranchKind.BREAKER;
    }

    /** Whether current may enter at that end: outputs and diodes pass it one way only. */
    static boolean opensFrom(Branch branch, PointId point) {
        return !isOneWay(branch) || branch.from().equals(point);
    }

    static boolean isOneWay(Branch branch) {
        return switch (branch.kind()) {
            case DIODE, OUTPUT_PIN, SOLID_STATE_OUTPUT, FREEWHEEL_DIODE, CLAMP -> true;
            default -> false;
        };
    }

    /**
     * The switch or relay a contact belongs to. Only one of its contacts is closed at a time, so no current enters by one
     * of them and leaves by another.
     */
    static Optional<ElementId> changeOver(Branch branch) {
        return branch.kind() == BranchKind.SWITCH || branch.kind() == BranchKind.RELAY_CONTACT
                ? branch.element()
                : Optional.empty();
    }

    /** The component a device's branch belongs to. */
    static Optional<ComponentId> component(Branch branch) {
        return branch.element().filter(ComponentId.class::isInstance).map(ComponentId.class::cast);
    }
}
