package org.ohmloom.tables;

/**
 * How batteries of a kind behave: voltage by charge level, resistance, what they take in, what they give in long discharge.
 * Charge levels are fractions from 0 to 1; beyond the listed range the outermost row holds.
 *
 * @param id                     what files call it, as in "lead-acid-agm"
 * @param title                  what people call it
 * @param openCircuit            open-circuit voltage of a rested cell, V, by charge in percent
 * @param resistanceByCelsius    factor on the resistance by temperature in C, 1 at 25 C
 * @param resistanceByCharge     factor on the resistance by charge in percent, 1 when full
 * @param resistanceBySeconds    factor on the resistance by pulse length in s, 1 at 1 s
 * @param acceptanceByCharge     most charging current, A for each Ah of capacity, by charge in percent
 * @param acceptanceByCelsius    factor on that by temperature in C
 * @param peukert                Peukert's exponent, for steady discharge only
 * @param chargeEfficiency       share of the charge put in that can be taken out again
 * @param chargeResistance       charge resistance over the discharge resistance of a long pulse
 */
public record BatteryType(
        String id,
        String title,
        CitedCurve openCircuit,
        CitedCurve resistanceByCelsius,
        CitedCurve resistanceByCharge,
        CitedCurve resistanceBySeconds,
        CitedCurve acceptanceByCharge,
        CitedCurve acceptanceByCelsius,
        CitedValue peukert,
        CitedValue chargeEfficiency,
        CitedValue chargeResistance) {

    private static final double PERCENT = 100;

    /** Open-circuit voltage at a charge level over that when full. */
    public CitedValue openCircuitRatio(double chargeFraction) {
        CitedValue volts = openCircuit.at(chargeFraction * PERCENT);
        return new CitedValue(volts.value() / openCircuit.at(PERCENT).value(), volts.citation());
    }

    /** Factor on the discharge resistance at a temperature, 1 at 25 C. */
    public CitedValue temperatureFactor(double celsius) {
        return resistanceByCelsius.at(celsius);
    }

    /** Factor on the discharge resistance at a charge level, 1 when full. */
    public CitedValue chargeFactor(double chargeFraction) {
        return resistanceByCharge.at(chargeFraction * PERCENT);
    }

    /** Factor on the discharge resistance for a pulse length, s, 1 at 1 s; any length up to positive infinity. */
    public CitedValue pulseFactor(double seconds) {
        return resistanceBySeconds.at(seconds);
    }

    /** Most charging current of a warm battery, A for each Ah of its rated capacity. */
    public CitedValue acceptanceAmpsPerAmpHour(double chargeFraction) {
        return acceptanceByCharge.at(chargeFraction * PERCENT);
    }

    /** Factor on the charging current at a temperature. */
    public CitedValue acceptanceFactor(double celsius) {
        return acceptanceByCelsius.at(celsius);
    }
}
