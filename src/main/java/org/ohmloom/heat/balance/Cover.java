package org.ohmloom.heat.balance;

import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.within;

/**
 * What lies over a wire or bundle: still air inside it, if any, then a wall.
 *
 * @param gapMm                      thickness of the air inside, mm, 0 or more
 * @param gapWattsPerMetrePerKelvin  effective heat conductivity of that air with its radiation, W/mK
 * @param wallMm                     thickness of the wall, mm, 0 or more
 * @param wallWattsPerMetrePerKelvin heat conductivity of the wall, W/mK
 * @param emissivityFraction         emissivity of its outside
 */
public record Cover(
        double gapMm,
        double gapWattsPerMetrePerKelvin,
        double wallMm,
        double wallWattsPerMetrePerKelvin,
        double emissivityFraction) {

    /** Nothing: bare insulation with the usual emissivity. */
    public static final Cover NONE = new Cover(0, 1, 0, 1, Surface.USUAL_EMISSIVITY);

    public Cover {
        notNegative(gapMm, "air inside a covering in mm");
        positive(gapWattsPerMetrePerKelvin, "conductivity of the air inside a covering in W/mK");
        notNegative(wallMm, "wall of a covering in mm");
        positive(wallWattsPerMetrePerKelvin, "conductivity of a covering in W/mK");
        within(emissivityFraction, 1e-3, 1, "emissivity of a covering");
    }

    /** The outside over something of that diameter, mm. */
    public Surface over(double diameterMm) {
        return new Surface(diameterMm + 2 * (gapMm + wallMm), emissivityFraction);
    }

    /** Rise across the covering for each watt per metre, K m/W, over something of that diameter, mm. */
    public double kelvinMetresPerWatt(double diameterMm) {
        double inner = diameterMm + 2 * gapMm;
        return Math.log(inner / diameterMm) / (2 * Math.PI * gapWattsPerMetrePerKelvin)
                + Math.log((inner + 2 * wallMm) / inner) / (2 * Math.PI * wallWattsPerMetrePerKelvin);
    }
}
