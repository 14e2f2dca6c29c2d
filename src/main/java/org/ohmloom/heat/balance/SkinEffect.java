package org.ohmloom.heat.balance;

/**
 * Crowding of alternating current to the outside of a round conductor.
 *
 * <p>Depth: sqrt(rho/(pi f mu0)). Resistance: IEC 60287-1-1 clause 2.1.2 (from memory) with ks = 1, which takes stranded
 * copper as solid and so is on the safe side; x2 = 8 pi f 1e-7 / R', R' in ohm per metre.
 */
public final class SkinEffect {

    private static final double VACUUM = 4e-7 * Math.PI;
    private static final double OHM_METRE_PER_OHM_MM2 = 1e-6;
    private static final double IACS_OHM_MM2_PER_METRE = 1.0 / 58;
    private static final int HARMONICS = 200;

    private SkinEffect() {}

    /** Skin depth in copper at a conductor temperature, deg C, and a frequency, Hz; mm. */
    public static double depthMm(double hertz, double celsius) {
        double resistivity = IACS_OHM_MM2_PER_METRE
                * OHM_METRE_PER_OHM_MM2
                * (RoundWire.BETA_CELSIUS + celsius)
                / (RoundWire.BETA_CELSIUS + 20);
        return 1e3 * Math.sqrt(resistivity / (Math.PI * hertz * VACUUM));
    }

    /** Resistance to alternating current over that to direct current, 1 or more, of a conductor of so much a metre. */
    public static double resistanceRatio(double hertz, double ohmsPerMetre) {
        double square = 8 * Math.PI * hertz * 1e-7 / ohmsPerMetre;
        double x = Math.sqrt(square);
        if (x <= 2.8) {
            double fourth = square * square;
            return 1 + fourth / (192 + 0.8 * fourth);
        }
        return x <= 3.8 ? 0.864 - 0.0177 * x + 0.0563 * square : 0.354 * x + 0.267;
    }

    /**
     * How much more heat a current switched on and off makes than its RMS value does in the direct-current resistance, as a
     * share of that heat; 0 or more. Each harmonic of the rectangle counts with its own resistance.
     *
     * @param hertz        switching frequency, Hz
     * @param dutyFraction share of the period switched on, 0 to 1
     * @param ohmsPerMetre resistance of a metre to direct current, ohm
     */
    public static double extraHeatFraction(double hertz, double dutyFraction, double ohmsPerMetre) {
        if (dutyFraction <= 0 || dutyFraction >= 1) {
            return 0;
        }
        double extra = 0;
        for (int n = 1; n <= HARMONICS; n++) {
            double amplitude = Math.sin(Math.PI * n * dutyFraction) / (Math.PI * n);
            extra += 2 * amplitude * amplitude * (resistanceRatio(n * hertz, ohmsPerMetre) - 1);
        }
        return extra / dutyFraction;
    }
}
