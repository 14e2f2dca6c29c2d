package org.ohmloom.size.protection;

import org.ohmloom.tables.CopperConstants;

/**
 * A copper conductor that keeps all its heat: I2 t = K2 S2 ln((beta + Tf)/(beta + Ti)), with K and beta of IEC 60949 and
 * IEC 60364-5-54 Annex A. The safe estimate for events of a few seconds: whatever the insulation takes up or the surface
 * gives off only makes it cooler.
 */
public final class Adiabatic {

    private Adiabatic() {}

    /** Factor k between two conductor temperatures, deg C: A s^0.5/mm2; 0 when the end is not above the start. */
    public static double k(CopperConstants copper, double startCelsius, double endCelsius) {
        double beta = copper.betaCelsius();
        return endCelsius <= startCelsius
                ? 0
                : copper.adiabaticK().value() * Math.sqrt(Math.log((beta + endCelsius) / (beta + startCelsius)));
    }

    /** Time to warm from one temperature to another, s; 0 when it is that hot already, infinite without current. */
    public static double seconds(
            CopperConstants copper, double areaMm2, double amps, double startCelsius, double endCelsius) {
        return seconds(k(copper, startCelsius, endCelsius), areaMm2, amps);
    }

    /** Time (k S / I)^2, s; k in A s^0.5/mm2, S in mm2, I in A. */
    public static double seconds(double k, double areaMm2, double amps) {
        double root = k * areaMm2 / amps;
        return root * root;
    }

    /** Temperature after a time at a current, deg C: (beta + Ti) exp(I2 t / (K S)2) - beta. */
    public static double endCelsius(
            CopperConstants copper, double areaMm2, double amps, double startCelsius, double seconds) {
        double beta = copper.betaCelsius();
        double ks = copper.adiabaticK().value() * areaMm2;
        return (beta + startCelsius) * Math.exp(amps * amps * seconds / (ks * ks)) - beta;
    }

    /** The smallest conductor for a current and a time, mm2: I sqrt(t) / k. */
    public static double areaMm2(double k, double amps, double seconds) {
        return amps * Math.sqrt(seconds) / k;
    }

    /** What a conductor withstands, A2s: k2 S2. */
    public static double withstandAmpSquaredSeconds(double k, double areaMm2) {
        return k * k * areaMm2 * areaMm2;
    }
}
