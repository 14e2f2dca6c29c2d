package org.ohmloom.ground;

import java.util.OptionalDouble;
import org.ohmloom.model.ElementId;

/**
 * The part of an offset that one current makes.
 *
 * <p>Each load, and each source but the reference one, is replaced by its solved current; the share is transfer resistance times
 * that current (superposition; reciprocity gives all transfer resistances of a point by one solve).
 *
 * @param cause          the load, source or wire whose current it is
 * @param amps           that current, mean, A
 * @param volts          its share, V
 * @param rippleVolts    amplitude its switching makes, V, 0 or more
 * @param switchedOffVolts what the offset would be with this load switched off: a full solve without it, V; only for the causes
 *                       that were tried
 */
public record OffsetShare(
        ElementId cause, double amps, double volts, double rippleVolts, OptionalDouble switchedOffVolts) {

    /** Transfer resistance between the current and the point, ohm; 0 without current. */
    public double transferOhms() {
        return amps == 0 ? 0 : volts / amps;
    }
}
