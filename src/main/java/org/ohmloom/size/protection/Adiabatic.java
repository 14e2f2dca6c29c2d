package org.ohmloom.size.protection;

import org.ohmloom.tables.CopperConstants;

/** The adiabatic equation of {@link org.ohmloom.heat.balance.Adiabatic} with the constants of the copper table. */
public final class Adiabatic {

    private Adiabatic() {}

    private static org.ohmloom.heat.balance.Adiabatic of(CopperConstants copper) {
        return new org.ohmloom.heat.balance.Adiabatic(copper.adiabaticK().value(), copper.betaCelsius());
    }

    /** Factor k between two conductor temperatures, deg C: A s^0.5/mm2; 0 when the end is not above the start. */
    public static double k(CopperConstants copper, double startCelsius, double endCelsius) {
        return of(copper).k(startCelsius, endCelsius);
    }

    /** Time to warm from one temperature to another, s; 0 when it is that hot already, infinite without current. */
    public static double seconds(
            CopperConstants copper, double areaMm2, double amps, double startCelsius, double endCelsius) {
        return of(copper).seconds(areaMm2, amps, startCelsius, endCelsius);
    }

    /** Time (k S / I)^2, s; k in A s^0.5/mm2, S in mm2, I in A. */
    public static double seconds(double k, double areaMm2, double amps) {
        return org.ohmloom.heat.balance.Adiabatic.seconds(k, areaMm2, amps);
    }

    /** Temperature after a time at a current, deg C. */
    public static double endCelsius(
            CopperConstants copper, double areaMm2, double amps, double startCelsius, double seconds) {
        return of(copper).endCelsius(areaMm2, amps, startCelsius, seconds);
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
