package org.ohmloom.heat.balance;

import static org.ohmloom.units.Require.notNegative;

/**
 * One wire of a bundle and what it carries.
 *
 * @param wire    the wire
 * @param rmsAmps its RMS current, A, 0 or more
 */
public record Bundled(RoundWire wire, double rmsAmps) {

    public Bundled {
        notNegative(rmsAmps, "RMS current in A");
    }

    /** Share of the cross-section, as the square of its outside diameter, mm2. */
    double squareMm2() {
        return wire.outsideDiameterMm() * wire.outsideDiameterMm();
    }
}
