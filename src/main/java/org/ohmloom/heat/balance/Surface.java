package org.ohmloom.heat.balance;

import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.within;

/**
 * The outside of a wire or bundle: a horizontal cylinder that sheds heat by natural convection and radiation.
 *
 * @param diameterMm         outside diameter, mm, more than 0
 * @param emissivityFraction share of the radiation of a black body, more than 0, up to 1
 */
public record Surface(double diameterMm, double emissivityFraction) {

    /** Emissivity of insulation, coverings and tape, whatever their colour: common practice. */
    public static final double USUAL_EMISSIVITY = 0.9;

    private static final double GRAVITY_METRES_PER_SECOND_SQUARED = 9.80665;
    /** Stefan-Boltzmann constant, W/(m2 K4): CODATA 2018. */
    private static final double BLACK_BODY = 5.670374419e-8;

    private static final double ZERO_KELVIN = 273.15;

    public Surface {
        positive(diameterMm, "outside diameter in mm");
        within(emissivityFraction, 1e-3, 1, "emissivity");
    }

    /** Heat shed by convection and radiation, W per metre; 0 at ambient, negative below. */
    public double wattsPerMetre(double surfaceCelsius, OpenAir air) {
        double rise = surfaceCelsius - air.ambientCelsius();
        if (rise == 0) {
            return 0;
        }
        double hot = surfaceCelsius + ZERO_KELVIN;
        double cold = air.ambientCelsius() + ZERO_KELVIN;
        double radiation = emissivityFraction * BLACK_BODY * (hot * hot * hot * hot - cold * cold * cold * cold);
        return Math.PI * diameterMm / 1e3 * (film(surfaceCelsius, air) * rise + radiation);
    }

    /** Heat transfer by convection alone, W/(m2 K). */
    public double film(double surfaceCelsius, OpenAir air) {
        Air properties = Air.at((surfaceCelsius + air.ambientCelsius()) / 2, air.pressurePascals());
        double metres = diameterMm / 1e3;
        return Convection.nusselt(Math.max(1e-9, rayleigh(surfaceCelsius, air)), properties.prandtlFactor())
                * properties.wattsPerMetrePerKelvin()
                / metres;
    }

    /** The Rayleigh number of the surface. */
    public double rayleigh(double surfaceCelsius, OpenAir air) {
        Air properties = Air.at((surfaceCelsius + air.ambientCelsius()) / 2, air.pressurePascals());
        double metres = diameterMm / 1e3;
        double grashof = GRAVITY_METRES_PER_SECOND_SQUARED
                * properties.expansionPerKelvin()
                * Math.abs(surfaceCelsius - air.ambientCelsius())
                * metres
                * metres
                * metres
                / (properties.squareMetresPerSecond() * properties.squareMetresPerSecond());
        return grashof * properties.prandtlFactor();
    }

    /** The surface temperature, deg C, at which so much heat is shed, W per metre, 0 or more; to 1e-6 K. */
    public double celsius(double wattsPerMetre, OpenAir air) {
        return Rise.where(air.ambientCelsius(), surface -> wattsPerMetre(surface, air) - wattsPerMetre);
    }
}
