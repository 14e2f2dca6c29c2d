package org.ohmloom.heat;

/** The share of an ampacity left in air of another temperature than its table's: sqrt((Tc - Ta)/(Tc - Tbase)). */
public final class AmbientRatio {

    private AmbientRatio() {}

    /**
     * The share; above 1 in cooler air.
     *
     * @param limitCelsius   conductor temperature the insulation stands, deg C, above the two others
     * @param ambientCelsius air temperature, deg C
     * @param baseCelsius    air temperature the table holds for, deg C
     */
    public static double of(double limitCelsius, double ambientCelsius, double baseCelsius) {
        return Math.sqrt((limitCelsius - ambientCelsius) / (limitCelsius - baseCelsius));
    }
}
