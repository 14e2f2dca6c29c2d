package org.ohmloom.tables;

/**
 * A published short-circuit factor k: I2 t = k2 S2, for a conductor that starts at one temperature and ends at another.
 *
 * @param metal          copper or aluminium
 * @param insulation     insulation it holds for
 * @param initialCelsius conductor temperature at the start, C
 * @param finalCelsius   conductor temperature at the end, C
 * @param factor         k, A s^0.5/mm2
 */
public record AdiabaticFactor(
        String metal, String insulation, double initialCelsius, double finalCelsius, CitedValue factor) {
    /** Reads a row with the columns metal, insulation, initial, final and k. */
    static AdiabaticFactor read(RowReader row) {
        String text = row.text("metal") + " " + row.text("insulation");
        return new AdiabaticFactor(
                row.text("metal"),
                row.text("insulation"),
                row.number("initial", "C"),
                row.number("final", "C"),
                new CitedValue(row.plainNumber("k"), row.citation(text, "k")));
    }
}
