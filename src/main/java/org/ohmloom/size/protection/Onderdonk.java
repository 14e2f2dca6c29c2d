package org.ohmloom.size.protection;

import org.ohmloom.tables.CopperConstants;

/**
 * The current that melts a copper conductor in a time, after Onderdonk: 33 (I/A)^2 t = log10((Tm - Ta)/(234 + Ta) + 1), A in
 * circular mils. A widely copied example writes 234 - Ta and so comes to 178 A where the equation gives 168.9 A.
 */
public final class Onderdonk {

    private static final double CONSTANT = 33;
    private static final double BETA_CELSIUS = 234;
    private static final double MM2_IN_A_CIRCULAR_MIL = Math.PI / 4 * 0.0254 * 0.0254;

    private Onderdonk() {}

    /** Current that melts a conductor of that area in that time from an air temperature, A. */
    public static double meltingAmps(CopperConstants copper, double areaMm2, double seconds, double ambientCelsius) {
        double circularMils = areaMm2 / MM2_IN_A_CIRCULAR_MIL;
        return circularMils * Math.sqrt(logarithm(copper, ambientCelsius) / (CONSTANT * seconds));
    }

    /** Time in which a current melts a conductor of that area from an air temperature, s. */
    public static double meltingSeconds(CopperConstants copper, double areaMm2, double amps, double ambientCelsius) {
        double ratio = areaMm2 / MM2_IN_A_CIRCULAR_MIL / amps;
        return ratio * ratio * logarithm(copper, ambientCelsius) / CONSTANT;
    }

    private static double logarithm(CopperConstants copper, double ambientCelsius) {
        double melting = copper.meltingPoint().value();
        return Math.log10((melting - ambientCelsius) / (BETA_CELSIUS + ambientCelsius) + 1);
    }
}
