package org.ohmloom.tables;

import org.ohmloom.words.Refusals;

/**
 * How hot an insulation may get while a protective device takes its time.
 *
 * @param insulation   the insulation type it holds for
 * @param overload     conductor temperature never to be passed in an overload, C
 * @param shortCircuit conductor temperature never to be passed within {@link #SHORT_CIRCUIT_SECONDS}, C; not below overload
 */
public record ShortTimeLimit(String insulation, CitedValue overload, CitedValue shortCircuit) {

    /** The longest short circuit for which its own limit holds, s: IEC 60364-4-43, clause 434.5.2 (from memory). */
    public static final double SHORT_CIRCUIT_SECONDS = 5;

    /** Reads a row with the columns insulation, overload and shortCircuit. */
    static ShortTimeLimit read(RowReader row) {
        String id = row.text("insulation");
        double overload = row.number("overload", "C");
        double shortCircuit = row.number("shortCircuit", "C");
        if (shortCircuit < overload) {
            throw row.unfit("shortCircuit", Refusals.text("it is below the overload limit; check both temperatures"));
        }
        return new ShortTimeLimit(
                id,
                new CitedValue(overload, row.citation(id, "overload")),
                new CitedValue(shortCircuit, row.citation(id, "shortCircuit")));
    }
}
