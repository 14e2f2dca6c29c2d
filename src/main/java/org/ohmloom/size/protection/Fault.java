package org.ohmloom.size.protection;

import java.util.OptionalDouble;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * A fault current worked out from the network.
 *
 * @param at         where, for people: a load or a point
 * @param amps       current through the fault, A
 * @param deviceAmps current through the device it is reckoned for, A
 * @param limited    whether its source limits its own current, as a converter does
 * @param told       how it was worked out
 */
public record Fault(Text at, double amps, double deviceAmps, boolean limited, Text told) {

    /** How it was worked out, in English. */
    public String sentence() {
        return told.english();
    }

    /** A device is not all of a loop. */
    private static final double LEAST_RESISTANCE_RATIO = 0.2;

    /**
     * This fault with another device in the way: the current of one loop, V / (V / I + more).
     *
     * @param moreOhms what that resists beyond the present device, ohm, either sign
     * @param volts    voltage that drives the fault, V; a small one is on the safe side both ways
     */
    Fault withMoreOhms(double moreOhms, double volts) {
        double ratio = 1 / Math.max(LEAST_RESISTANCE_RATIO, 1 + moreOhms * deviceAmps / volts);
        return moreOhms == 0 || deviceAmps == 0
                ? this
                : new Fault(
                        at,
                        amps * ratio,
                        deviceAmps * ratio,
                        limited,
                        FaultTexts.text("with-this-type", told, Formats.amps(deviceAmps * ratio)));
    }

    /** This fault behind an output that limits its current, A. */
    Fault cappedAt(OptionalDouble limitAmps) {
        double cap = limitAmps.orElse(Double.POSITIVE_INFINITY);
        return cap >= deviceAmps
                ? this
                : new Fault(at, Math.min(amps, cap), cap, limited, FaultTexts.text("limited", told, Formats.amps(cap)));
    }
}
