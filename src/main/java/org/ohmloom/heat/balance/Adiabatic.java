package org.ohmloom.heat.balance;

/**
 * A conductor that keeps all the heat it makes: I2 t = K2 A2 ln((234.5 + T2)/(234.5 + T1)), IEC 60949.
 */
public final class Adiabatic {

    /** K of copper, A s^0.5/mm2: IEC 60949, IEC 60364-5-54 Annex A. */
    public static final double COPPER_K = 226;

    private Adiabatic() {}

    /** Seconds from one conductor temperature to a higher one, deg C, for a copper area, mm2, and a current, A. */
    public static double seconds(double copperAreaMm2, double amps, double fromCelsius, double toCelsius) {
        if (toCelsius <= fromCelsius) {
            return 0;
        }
        double density = COPPER_K * copperAreaMm2 / amps;
        return density
                * density
                * Math.log((RoundWire.BETA_CELSIUS + toCelsius) / (RoundWire.BETA_CELSIUS + fromCelsius));
    }
}
