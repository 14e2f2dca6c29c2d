package org.ohmloom.heat.balance;

import static org.ohmloom.units.Require.that;
import static org.ohmloom.units.Require.within;

/**
 * The still air around a wire, and walls of the same temperature.
 *
 * @param ambientCelsius  air and wall temperature, deg C, -60 to 400
 * @param pressurePascals air pressure, Pa, more than 0
 */
public record OpenAir(double ambientCelsius, double pressurePascals) {

    /** Pressure at sea level, Pa: ISO 2533 standard atmosphere. */
    public static final double SEA_LEVEL_PASCALS = 101_325;

    private static final double TROPOPAUSE_METRES = 11_000;

    public OpenAir {
        within(ambientCelsius, -60, 400, "ambient temperature");
        that(pressurePascals > 0, "air pressure must be more than 0, was %s Pa", pressurePascals);
    }

    /** Air at sea level. */
    public static OpenAir seaLevel(double ambientCelsius) {
        return new OpenAir(ambientCelsius, SEA_LEVEL_PASCALS);
    }

    /** Air at an altitude, m, up to 20 km: pressure of the ISO 2533 standard atmosphere. */
    public static OpenAir at(double ambientCelsius, double altitudeMetres) {
        return new OpenAir(ambientCelsius, pressurePascals(altitudeMetres));
    }

    /** Pressure of the ISO 2533 standard atmosphere, Pa, at an altitude from -1 to 20 km, m. */
    public static double pressurePascals(double altitudeMetres) {
        double below = Math.min(altitudeMetres, TROPOPAUSE_METRES);
        double pascals = SEA_LEVEL_PASCALS * Math.pow(1 - 2.25577e-5 * below, 5.25588);
        return altitudeMetres <= TROPOPAUSE_METRES
                ? pascals
                : pascals * Math.exp(-(altitudeMetres - TROPOPAUSE_METRES) / 6341.62);
    }
}
