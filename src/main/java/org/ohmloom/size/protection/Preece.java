package org.ohmloom.size.protection;

/**
 * The current that melts a round copper wire when it lasts, in free air, after Preece: I = 10244 d^1.5, d in inches, which is 80
 * d^1.5 with d in mm. For a moment the wire stands more, see {@link Onderdonk}.
 */
public final class Preece {

    private static final double CONSTANT = 10_244;
    private static final double MILLIMETRES_IN_AN_INCH = 25.4;

    private Preece() {}

    /** The melting current of a round wire of that diameter in mm, A. */
    public static double meltingAmps(double diameterMm) {
        return CONSTANT * Math.pow(diameterMm / MILLIMETRES_IN_AN_INCH, 1.5);
    }

    /** The melting current of a conductor of that copper area in mm2, taken as one round wire, A. */
    public static double ofArea(double areaMm2) {
        return meltingAmps(2 * Math.sqrt(areaMm2 / Math.PI));
    }
}
