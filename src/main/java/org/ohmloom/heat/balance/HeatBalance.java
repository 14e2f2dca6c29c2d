package org.ohmloom.heat.balance;

/**
 * The steady heat balance of one wire alone in still air: I2 R(T) = heat shed by its surface.
 *
 * <p>The surface temperature is the unknown: from it follow the heat shed (natural convection and radiation), the rises
 * across covering and insulation, the conductor temperature and its resistance, and so the one current that keeps it
 * there. For a given current the temperature is found to 1e-6 K. Immutable; safe for any number of threads.
 *
 * @param wire  the wire
 * @param cover what lies over it
 * @param air   the air around it
 */
public record HeatBalance(RoundWire wire, Cover cover, OpenAir air) {

    /** A wire without a covering. */
    public static HeatBalance bare(RoundWire wire, OpenAir air) {
        return new HeatBalance(wire, Cover.NONE, air);
    }

    /** The outside. */
    public Surface surface() {
        return cover.over(wire.outsideDiameterMm());
    }

    /** Rise from the outside to the conductor for each watt per metre, K m/W. */
    public double innerKelvinMetresPerWatt() {
        return wire.insulationKelvinMetresPerWatt() + cover.kelvinMetresPerWatt(wire.outsideDiameterMm());
    }

    /** Heat shed when the conductor has a temperature, deg C, at or above ambient; W per metre. */
    public double lossWattsPerMetre(double conductorCelsius) {
        Surface surface = surface();
        return surface.wattsPerMetre(surfaceCelsius(surface, conductorCelsius), air);
    }

    private double surfaceCelsius(Surface surface, double conductorCelsius) {
        double inner = innerKelvinMetresPerWatt();
        if (conductorCelsius <= air.ambientCelsius()) {
            return conductorCelsius;
        }
        double low = air.ambientCelsius() - conductorCelsius;
        double high = surface.wattsPerMetre(conductorCelsius, air) * inner;
        return high <= 0
                ? conductorCelsius
                : Rise.between(
                        air.ambientCelsius(),
                        low,
                        conductorCelsius,
                        high,
                        celsius -> celsius + surface.wattsPerMetre(celsius, air) * inner - conductorCelsius);
    }

    /** Where the conductor settles under a lasting RMS current, A, either sign. */
    public SteadyState at(double amps) {
        if (amps == 0) {
            return new SteadyState(air.ambientCelsius(), air.ambientCelsius(), 0, false);
        }
        double melting = RoundWire.MELTING_CELSIUS;
        double atMelting = lossWattsPerMetre(melting);
        if (wire.heatWattsPerMetre(amps, melting) >= atMelting) {
            double surface = surfaceCelsius(surface(), melting);
            return new SteadyState(melting, surface, wire.heatWattsPerMetre(amps, melting), true);
        }
        Surface surface = surface();
        double inner = innerKelvinMetresPerWatt();
        double settled = Rise.where(air.ambientCelsius(), celsius -> {
            double watts = surface.wattsPerMetre(celsius, air);
            return watts - wire.heatWattsPerMetre(amps, celsius + watts * inner);
        });
        double watts = surface.wattsPerMetre(settled, air);
        return new SteadyState(settled + watts * inner, settled, watts, false);
    }

    /** The lasting current that brings the conductor to a temperature, A; 0 for one at or below ambient. */
    public double ampacityAmps(double conductorCelsius) {
        if (conductorCelsius <= air.ambientCelsius()) {
            return 0;
        }
        return Math.sqrt(lossWattsPerMetre(conductorCelsius) / wire.ohmsPerMetreAt(conductorCelsius));
    }
}
