package org.ohmloom.tables;

import java.util.OptionalDouble;

/**
 * What batteries and conductors are taken for when a fault current is reckoned.
 *
 * @param condition         minimum or maximum
 * @param chargeFraction    charge level of a battery with a type
 * @param batteryCelsius    temperature of a battery with a type, C
 * @param emfRatio          electromotive force over the one entered, for a battery without a type
 * @param ohmsRatio         internal resistance over the one entered, for a battery without a type
 * @param conductorsCelsius conductor temperature, C; empty for the insulation's own continuous limit
 * @param citation          where it comes from
 */
public record FaultCondition(
        String condition,
        double chargeFraction,
        double batteryCelsius,
        double emfRatio,
        double ohmsRatio,
        OptionalDouble conductorsCelsius,
        Citation citation) {

    /** Names of the two conditions. */
    public static final String MINIMUM = "minimum", MAXIMUM = "maximum";

    /** Reads a row with the columns condition, charge, battery, emfShare, ohmsShare and conductors (may be empty). */
    static FaultCondition read(RowReader row) {
        String condition = row.text("condition");
        return new FaultCondition(
                condition,
                row.positive("charge", "1"),
                row.number("battery", "C"),
                row.positive("emfShare", "1"),
                row.positive("ohmsShare", "1"),
                row.optionalText("conductors").isPresent()
                        ? OptionalDouble.of(row.number("conductors", "C"))
                        : OptionalDouble.empty(),
                row.citation(condition, "emfShare"));
    }
}
