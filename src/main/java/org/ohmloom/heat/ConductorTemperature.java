package org.ohmloom.heat;

/**
 * Temperature of a conductor that carries less, or more, than it may.
 *
 * <p>Table method: a conductor at its full ampacity runs at its insulation's limit, and its rise over the air goes with
 * the square of its current. This is no measurement; the tables hold a reserve, so the true temperature is below it.
 */
public final class ConductorTemperature {

    private ConductorTemperature() {}

    /**
     * ambient + (limit - ambient) x (I/ampacity)^2, deg C.
     *
     * @param ambientCelsius air temperature, deg C
     * @param limitCelsius   temperature at the ampacity, deg C
     * @param amps           steady RMS current, A, either sign
     * @param ampacityAmps   what it may carry there, A, more than 0
     */
    public static double celsius(double ambientCelsius, double limitCelsius, double amps, double ampacityAmps) {
        double loading = amps / ampacityAmps;
        return ambientCelsius + (limitCelsius - ambientCelsius) * loading * loading;
    }

    /**
     * The conservative estimate of FAA AC 43.13-1B CHG 1, paragraph 11-66 (from memory): T1 + (TR - T1) x
     * sqrt(I2/Imax), deg C. It is hotter than {@link #celsius} at every partial current, on purpose.
     *
     * @param ambientCelsius air temperature T1, deg C
     * @param limitCelsius   conductor rating TR, deg C
     * @param amps           current I2, A, 0 or more
     * @param ampacityAmps   what it may carry, Imax, A, more than 0
     */
    public static double conservativeCelsius(
            double ambientCelsius, double limitCelsius, double amps, double ampacityAmps) {
        return ambientCelsius + (limitCelsius - ambientCelsius) * Math.sqrt(amps / ampacityAmps);
    }
}
