package org.ohmloom.size;

import org.ohmloom.model.ComponentId;
import org.ohmloom.model.StateId;

/**
 * How much of the drop a load may lose is left for a wire on its way.
 *
 * @param state          operating state
 * @param load           the load
 * @param limitVolts     what the load may lose in all, V
 * @param otherVolts     what contacts, devices and wires that are taken as they are lose, V
 * @param metres         length of the wires that share the rest, m, more than 0
 * @param weightRatio    sum of length x root of current over those wires, per root of this wire's current and per metre
 *                       of theirs; 1 when all carry the same
 * @param amps           largest current of this wire, A, more than 0
 */
record DropShare(
        StateId state,
        ComponentId load,
        double limitVolts,
        double otherVolts,
        double metres,
        double weightRatio,
        double amps) {

    /** What the wires that share it may lose together, V; 0 or less when nothing is left. */
    double leftVolts() {
        return limitVolts - otherVolts;
    }

    /** What this wire may lose per metre. */
    double voltsPerMetre() {
        return leftVolts() / (metres * weightRatio);
    }

    /** The resistance per metre that allows this wire, ohm/m. */
    double ohmsPerMetre() {
        return voltsPerMetre() / amps;
    }
}
