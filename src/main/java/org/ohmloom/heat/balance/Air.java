package org.ohmloom.heat.balance;

/**
 * Properties of still air at a film temperature and pressure.
 *
 * <p>Viscosity and conductivity by Sutherland's formula (White, Viscous Fluid Flow, 2nd edition, Tables 1-2 and 1-3, from
 * memory: 1.716e-5 Pa s, 110.4 K; 0.0241 W/mK, 194 K, both at 273.15 K), density by the gas law, specific heat 1006 J/kgK.
 *
 * @param wattsPerMetrePerKelvin     heat conductivity, W/mK
 * @param squareMetresPerSecond   kinematic viscosity, m2/s
 * @param prandtlFactor           Prandtl number
 * @param expansionPerKelvin      expansion of an ideal gas, 1/K
 */
record Air(
        double wattsPerMetrePerKelvin, double squareMetresPerSecond, double prandtlFactor, double expansionPerKelvin) {

    private static final double ZERO_KELVIN = 273.15;
    private static final double GAS_JOULES_PER_KG_KELVIN = 287.05;
    private static final double HEAT_JOULES_PER_KG_KELVIN = 1006;

    /** Air at a film temperature, deg C above -273, and a pressure, Pa. */
    static Air at(double filmCelsius, double pressurePascals) {
        double kelvin = filmCelsius + ZERO_KELVIN;
        double ratio = kelvin / ZERO_KELVIN;
        double power = ratio * Math.sqrt(ratio);
        double pascalSeconds = 1.716e-5 * power * (ZERO_KELVIN + 110.4) / (kelvin + 110.4);
        double conductivity = 0.0241 * power * (ZERO_KELVIN + 194) / (kelvin + 194);
        double kgPerCubicMetre = pressurePascals / (GAS_JOULES_PER_KG_KELVIN * kelvin);
        return new Air(
                conductivity,
                pascalSeconds / kgPerCubicMetre,
                pascalSeconds * HEAT_JOULES_PER_KG_KELVIN / conductivity,
                1 / kelvin);
    }
}
