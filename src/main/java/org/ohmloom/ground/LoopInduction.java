package org.ohmloom.ground;

import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

/**
 * Loops in alternating magnetic fields.
 *
 * <p>Sources: H. W. Ott, Noise Reduction Techniques in Electronic Systems, 2nd edition, eq. 2-8 for the voltage; C. R. Paul,
 * Introduction to Electromagnetic Compatibility, for the inductances; all from memory. The inductances hold for round wires and
 * leave the field inside the conductors out.
 */
public final class LoopInduction {

    /** Of free space over pi, H/m: 4 pi 1e-7 / pi. */
    private static final double MU0_OVER_PI = 4e-7;

    private LoopInduction() {}

    /**
     * V = 2 pi f B A: what a uniform field at right angles to a loop induces in it, V RMS.
     *
     * @param hertz        frequency, Hz, more than 0
     * @param tesla        flux density, T RMS, 0 or more
     * @param squareMetres area of the loop, m2, 0 or more
     */
    public static double volts(double hertz, double tesla, double squareMetres) {
        positive(hertz, "frequency of a field");
        return 2 * Math.PI * hertz * notNegative(tesla, "flux density") * notNegative(squareMetres, "area of a loop");
    }

    /**
     * I = V / |R + j w L|: the current a voltage drives round a loop, A RMS; 0 for 0 V.
     *
     * @param volts   voltage round the loop, V RMS
     * @param ohms    resistance round it, ohm, 0 or more
     * @param henries inductance, H, 0 or more; not both 0
     * @param hertz   frequency, Hz, more than 0
     */
    public static double amps(double volts, double ohms, double henries, double hertz) {
        double impedanceOhms = impedanceOhms(ohms, henries, hertz);
        that(impedanceOhms > 0, "a loop needs a resistance or an inductance");
        return volts / impedanceOhms;
    }

    /**
     * |R + j w L|: resistance and reactance at right angles, ohm. The common impedance of a shared conductor, too: the other's
     * current times it is the voltage that disturbs (MIL-HDBK-419A, 6.2.2.1, from memory).
     *
     * @param ohms    resistance, ohm, 0 or more
     * @param henries inductance, H, 0 or more
     * @param hertz   frequency, Hz, more than 0
     */
    public static double impedanceOhms(double ohms, double henries, double hertz) {
        return Math.hypot(ohms, 2 * Math.PI * positive(hertz, "frequency") * henries);
    }

    /**
     * L = (mu0 / pi) ln(2 D / d) l: there and back along two parallel wires, H.
     *
     * @param spacingMetres  between their centres, m, at least the diameter
     * @param diameterMetres of each conductor, m, more than 0
     * @param lengthMetres   of the pair, m
     */
    public static double pairHenries(double spacingMetres, double diameterMetres, double lengthMetres) {
        that(
                spacingMetres >= positive(diameterMetres, "diameter of a conductor"),
                "wires %s m apart would lie in one another",
                spacingMetres);
        return MU0_OVER_PI * Math.log(2 * spacingMetres / diameterMetres) * lengthMetres;
    }

    /**
     * L = (mu0 / 2 pi) ln(4 h / d) l: along a wire above a plane and back through the plane, H.
     *
     * @param heightMetres   of the wire's centre above the plane, m, at least half the diameter
     * @param diameterMetres of the conductor, m, more than 0
     * @param lengthMetres   of the wire, m
     */
    public static double abovePlaneHenries(double heightMetres, double diameterMetres, double lengthMetres) {
        that(
                2 * heightMetres >= positive(diameterMetres, "diameter of a conductor"),
                "a wire %s m above a plane would lie in it",
                heightMetres);
        return MU0_OVER_PI / 2 * Math.log(4 * heightMetres / diameterMetres) * lengthMetres;
    }
}
