package org.ohmloom.size.protection;

import org.ohmloom.tables.CopperConstants;

/**
 * A conductor as one lump: the heat of its copper alone, losses in proportion to its rise over the air so that it settles at
 * a known temperature under a known current, resistance rising with temperature. What is known is its ampacity at its limit,
 * or what the heat balance of its bundle gives with its neighbours at their usual currents.
 *
 * <p>C dT/dt = q (beta + T) - G (T - Ta), with G = Iz2 R(limit)/(limit - Ta) and q = G (limit - Ta) (I/Iz)2/(beta + limit).
 * On the safe side: insulation takes up heat as well, and the loss rises faster than the temperature. Without an ampacity
 * above 0 nothing is lost at all.
 *
 * @param areaMm2             copper area, mm2, more than 0
 * @param ampacityAmps        current at which it settles at its limit, A, 0 or more
 * @param limitCelsius        its continuous limit, deg C
 * @param ambientCelsius      air, deg C
 * @param metreJoulesPerKelvin heat to warm a metre of it, J/(K m)
 * @param wattsPerMetre    heat of a metre at its limit and its ampacity, W/m
 * @param betaCelsius         the number in R(T) = R20 (beta + T)/(beta + 20), C
 */
record LumpedHeating(
        double areaMm2,
        double ampacityAmps,
        double limitCelsius,
        double ambientCelsius,
        double metreJoulesPerKelvin,
        double wattsPerMetre,
        double betaCelsius)
        implements ConductorHeating {

    private static final double MM3_OF_A_METRE = 1000;

    static LumpedHeating of(
            CopperConstants copper,
            double areaMm2,
            double ohmsPerMetreAt20Celsius,
            double ampacityAmps,
            double limitCelsius,
            double ambientCelsius) {
        return new LumpedHeating(
                areaMm2,
                ampacityAmps,
                limitCelsius,
                ambientCelsius,
                copper.heatCapacity().value() * areaMm2 * MM3_OF_A_METRE,
                ampacityAmps * ampacityAmps * ohmsPerMetreAt20Celsius * copper.resistanceRatio(limitCelsius),
                copper.betaCelsius());
    }

    /** Rate of warming at a temperature, as constant and slope: dT/dt = constant + slope T. */
    private record Rate(double constantKelvinPerSecond, double slopePerSecond) {
        double at(double celsius) {
            return constantKelvinPerSecond + slopePerSecond * celsius;
        }
    }

    private Rate rate(double amps) {
        double rise = limitCelsius - ambientCelsius;
        double loss = wattsPerMetre / rise;
        double ratio = amps / ampacityAmps;
        double heat = wattsPerMetre * ratio * ratio / (betaCelsius + limitCelsius);
        return new Rate(
                (heat * betaCelsius + loss * ambientCelsius) / metreJoulesPerKelvin,
                (heat - loss) / metreJoulesPerKelvin);
    }

    @Override
    public double steadyCelsius(double amps) {
        if (amps == 0) {
            return ambientCelsius;
        }
        if (ampacityAmps <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        Rate rate = rate(amps);
        return rate.slopePerSecond() < 0
                ? -rate.constantKelvinPerSecond() / rate.slopePerSecond()
                : Double.POSITIVE_INFINITY;
    }

    @Override
    public double seconds(double amps, double startCelsius, double endCelsius) {
        if (endCelsius <= startCelsius) {
            return 0;
        }
        if (ampacityAmps <= 0) {
            return amps == 0 ? Double.POSITIVE_INFINITY : 0;
        }
        Rate rate = rate(amps);
        double first = rate.at(startCelsius);
        double last = rate.at(endCelsius);
        if (first <= 0 || last <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double logarithm = Math.log(last / first);
        return logarithm == 0 ? (endCelsius - startCelsius) / first : logarithm / rate.slopePerSecond();
    }

    @Override
    public double celsiusAfter(double amps, double startCelsius, double seconds) {
        if (ampacityAmps <= 0) {
            return amps == 0 ? startCelsius : Double.POSITIVE_INFINITY;
        }
        Rate rate = rate(amps);
        double slope = rate.slopePerSecond();
        return slope == 0
                ? startCelsius + rate.at(startCelsius) * seconds
                : startCelsius + rate.at(startCelsius) * Math.expm1(slope * seconds) / slope;
    }
}
