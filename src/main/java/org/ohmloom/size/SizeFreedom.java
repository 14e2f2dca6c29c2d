package org.ohmloom.size;

import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;

/** Which wires a choice of sizes may touch. */
public final class SizeFreedom {

    private SizeFreedom() {}

    /**
     * Whether the size of a wire may be chosen or changed: not of one that is in the vehicle, has a measured resistance or
     * has a size that is locked, and not of a shield.
     */
    public static boolean mayChange(Wire wire) {
        return !wire.existing()
                && wire.measuredOhms().isEmpty()
                && wire.signalClass() != SignalClass.SHIELD
                && !(wire.locked() && wire.gauge().isPresent());
    }
}
