package org.ohmloom.ground.coupling;

import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

/**
 * Textbook formulas of what one wire does to another beside it, from memory where not said otherwise: Ott, Noise Reduction
 * Techniques in Electronic Systems, 2nd edition, chapter 2; Paul, Introduction to Electromagnetic Compatibility, chapters on
 * crosstalk and shielding.
 */
public final class CouplingFormulas {

    /** Permittivity of empty space, F/m. */
    public static final double PERMITTIVITY = 8.8541878128e-12;

    /** Permeability of empty space, H/m. */
    public static final double PERMEABILITY = 4e-7 * Math.PI;

    private CouplingFormulas() {}

    /**
     * Capacitance of two parallel round wires, F/m: C = 2 pi e / acosh((D2 - a2 - b2) / (2 a b)); with equal wires this is
     * pi e / acosh(D / d). Electrostatics, exact for wires in one medium.
     *
     * @param separationMetres     distance of their centres D, m
     * @param oneRadiusMetres      radius of the one conductor a, m
     * @param otherRadiusMetres    radius of the other conductor b, m
     * @param relativePermittivity of what is between them, 1 or more
     */
    public static double pairFaradsPerMetre(
            double separationMetres, double oneRadiusMetres, double otherRadiusMetres, double relativePermittivity) {
        that(
                separationMetres > oneRadiusMetres + otherRadiusMetres,
                "conductors %s m apart with radii %s m and %s m touch",
                separationMetres,
                oneRadiusMetres,
                otherRadiusMetres);
        double ratio = (separationMetres * separationMetres
                        - oneRadiusMetres * oneRadiusMetres
                        - otherRadiusMetres * otherRadiusMetres)
                / (2 * oneRadiusMetres * otherRadiusMetres);
        return 2 * Math.PI * PERMITTIVITY * relativePermittivity / acosh(ratio);
    }

    /** Capacitance of a wire of radius r at a height h over a plane, F/m: 2 pi e / acosh(h / r). */
    public static double planeFaradsPerMetre(double heightMetres, double radiusMetres, double relativePermittivity) {
        that(heightMetres > radiusMetres, "a wire of radius %s m cannot lie %s m high", radiusMetres, heightMetres);
        return 2 * Math.PI * PERMITTIVITY * relativePermittivity / acosh(heightMetres / radiusMetres);
    }

    /**
     * Mutual inductance of two wires over a plane, H/m: M = (mu / 4 pi) ln(1 + 4 h1 h2 / s2), 0.1 ln(...) in microhenries (Paul).
     */
    public static double mutualHenriesPerMetre(
            double oneHeightMetres, double otherHeightMetres, double separationMetres) {
        positive(separationMetres, "separation of wires");
        return PERMEABILITY
                / (4 * Math.PI)
                * Math.log1p(4 * oneHeightMetres * otherHeightMetres / (separationMetres * separationMetres));
    }

    /** Inductance of a wire of diameter d at a height h over a plane, H/m: (mu / 2 pi) ln(4 h / d) (Paul). */
    public static double planeHenriesPerMetre(double heightMetres, double diameterMetres) {
        positive(diameterMetres, "diameter of a wire");
        return PERMEABILITY / (2 * Math.PI) * Math.log(4 * heightMetres / diameterMetres);
    }

    /**
     * Largest voltage an edge puts through a capacitance onto a signal, V: an edge that rises evenly drives C12 dV/dt into R
     * beside C12 + C2G, V = R C12 dV/dt (1 - exp(-t / (R (C12 + C2G)))). A slow edge gives R C12 dV/dt (Ott, equation 2-3), a
     * sudden one C12 / (C12 + C2G) of the edge (equation 2-5).
     *
     * @param edgeVolts     height of the edge, V
     * @param edgeSeconds   time it takes, s, more than 0
     * @param mutualFarads  capacitance between the wires, F
     * @param groundFarads  capacitance of the signal to ground, F, 0 or more
     * @param ohms          resistance of the signal to ground, ohm, more than 0; infinite where nothing holds it
     */
    public static double capacitiveVolts(
            double edgeVolts, double edgeSeconds, double mutualFarads, double groundFarads, double ohms) {
        positive(edgeSeconds, "time of an edge");
        double together = mutualFarads + groundFarads;
        if (together == 0) {
            return 0;
        }
        double sudden = edgeVolts * mutualFarads / together;
        if (Double.isInfinite(ohms)) {
            return sudden;
        }
        double constants = edgeSeconds / (ohms * together);
        return sudden * -Math.expm1(-constants) / constants;
    }

    /** Voltage a changing current induces round a signal and its return, V: M dI/dt (Ott, equation 2-9 in its form in time). */
    public static double inductiveVolts(double mutualHenries, double edgeAmps, double edgeSeconds) {
        positive(edgeSeconds, "time of an edge");
        return mutualHenries * edgeAmps / edgeSeconds;
    }

    /**
     * What is left of a rectangular pulse behind a first-order filter, as a share of its height: 1 - exp(-2 pi f t).
     *
     * @param filterHertz  corner frequency f, Hz
     * @param pulseSeconds length of the pulse t, s
     */
    public static double filteredShare(double filterHertz, double pulseSeconds) {
        return -Math.expm1(-2 * Math.PI * filterHertz * pulseSeconds);
    }

    /**
     * What is left of a magnetic disturbance inside a shield grounded at both ends, as a share: 1 / root(1 + (w / wc)2) with the
     * cut-off wc = Rs / Ls (Ott, chapter 2). Grounded at one end it does nothing against a magnetic field.
     *
     * @param hertz         frequency, Hz
     * @param shieldOhms    resistance of the shield with its ways to ground, ohm
     * @param shieldHenries inductance of the shield over the plane, H, more than 0
     */
    public static double shieldShare(double hertz, double shieldOhms, double shieldHenries) {
        double ratio = 2 * Math.PI * hertz * shieldHenries / shieldOhms;
        return 1 / Math.sqrt(1 + ratio * ratio);
    }

    /** The frequency an edge reaches up to, Hz: 1 / (pi t) for an edge of time t. */
    public static double edgeHertz(double edgeSeconds) {
        return 1 / (Math.PI * edgeSeconds);
    }

    private static double acosh(double value) {
        return Math.log(value + Math.sqrt(value * value - 1));
    }
}
