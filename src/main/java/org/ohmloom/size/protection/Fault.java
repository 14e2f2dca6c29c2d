package org.ohmloom.size.protection;

import java.util.OptionalDouble;
import org.ohmloom.units.Formats;

/**
 * A fault current worked out from the network.
 *
 * @param at         where, for people: a load or a point
 * @param amps       current through the fault, A
 * @param deviceAmps current through the device it is reckoned for, A
 * @param limited    whether its source limits its own current, as a converter does
 * @param sentence   how it was worked out
 */
public record Fault(String at, double amps, double deviceAmps, boolean limited, String sentence) {

    /** This fault behind an output that limits its current, A. */
    Fault cappedAt(OptionalDouble limitAmps) {
        double cap = limitAmps.orElse(Double.POSITIVE_INFINITY);
        return cap >= deviceAmps
                ? this
                : new Fault(
                        at,
                        Math.min(amps, cap),
                        cap,
                        limited,
                        sentence + "; an output before it limits that to " + Formats.amps(cap));
    }
}
