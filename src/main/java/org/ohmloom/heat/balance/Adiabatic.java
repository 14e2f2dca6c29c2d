package org.ohmloom.heat.balance;

/**
 * A conductor that keeps all the heat it makes: I2 t = K2 S2 ln((beta + Tf)/(beta + Ti)), IEC 60949 and IEC 60364-5-54
 * Annex A. The safe estimate for events of a few seconds: whatever the insulation takes up or the surface gives off only
 * makes it cooler.
 *
 * @param materialK   K of the metal, A s^0.5/mm2, more than 0
 * @param betaCelsius reciprocal of its temperature coefficient of resistance at 0 deg C, K
 */
public record Adiabatic(double materialK, double betaCelsius) {

    /** Copper: K 226 A s^0.5/mm2, beta 234.5 K. */
    public static final Adiabatic COPPER = new Adiabatic(226, RoundWire.BETA_CELSIUS);

    /** Factor k between two conductor temperatures, deg C: A s^0.5/mm2; 0 when the end is not above the start. */
    public double k(double startCelsius, double endCelsius) {
        return endCelsius <= startCelsius
                ? 0
                : materialK * Math.sqrt(Math.log((betaCelsius + endCelsius) / (betaCelsius + startCelsius)));
    }

    /** Seconds from one conductor temperature to a higher one, deg C: (k S / I)^2, for an area, mm2, and a current, A. */
    public double seconds(double areaMm2, double amps, double startCelsius, double endCelsius) {
        return seconds(k(startCelsius, endCelsius), areaMm2, amps);
    }

    /** Temperature after a time, s, at a current, A, deg C: (beta + Ti) exp(I2 t / (K S)2) - beta. */
    public double endCelsius(double areaMm2, double amps, double startCelsius, double seconds) {
        double ks = materialK * areaMm2;
        return (betaCelsius + startCelsius) * Math.exp(amps * amps * seconds / (ks * ks)) - betaCelsius;
    }

    /** Time (k S / I)^2, s; k in A s^0.5/mm2, S in mm2, I in A. */
    public static double seconds(double k, double areaMm2, double amps) {
        double root = k * areaMm2 / amps;
        return root * root;
    }
}
