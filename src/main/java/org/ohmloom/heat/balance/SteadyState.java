package org.ohmloom.heat.balance;

/**
 * Where a conductor settles under a lasting current.
 *
 * @param celsius           conductor temperature, deg C; the melting point of copper when it runs away
 * @param surfaceCelsius    temperature of the outside of the wire, bundle or covering, deg C
 * @param heatWattsPerMetre heat the conductor makes, W for each metre
 * @param runaway           whether no steady temperature below the melting point of copper exists: resistance rises with
 *                          temperature faster than the heat gets away
 */
public record SteadyState(double celsius, double surfaceCelsius, double heatWattsPerMetre, boolean runaway) {}
