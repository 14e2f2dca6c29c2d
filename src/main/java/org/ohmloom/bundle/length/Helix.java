package org.ohmloom.bundle.length;

import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;

/**
 * How much longer a wire is than the axis it is wound about: {@code sqrt(1 + (pi Dp / lay)^2)}, with the diameter of the
 * circle on which the middle of the wire runs. Geometry of the helix.
 */
public final class Helix {

    /** The formula as it is shown. */
    public static final String FORMULA = "sqrt(1 + (pi Dp / lay)^2)";

    private Helix() {}

    /**
     * Length over length along the axis, 1 or more.
     *
     * @param pitchDiameterMm diameter of the circle on which the middle of the wire runs, mm, 0 or more
     * @param layLengthMm     length of one full turn along the axis, mm, more than 0
     */
    public static double takeUpRatio(double pitchDiameterMm, double layLengthMm) {
        notNegative(pitchDiameterMm, "pitch circle");
        positive(layLengthMm, "lay length");
        return Math.hypot(1, Math.PI * pitchDiameterMm / layLengthMm);
    }
}
