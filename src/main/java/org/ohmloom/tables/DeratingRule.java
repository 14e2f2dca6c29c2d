package org.ohmloom.tables;

/**
 * One published figure on how far a protective device may be loaded.
 *
 * @param id        its name, as in "continuous-load-blade"
 * @param value     the figure, in its unit
 * @param unit      its unit, as in "%" or "A"
 * @param statement what it says
 */
public record DeratingRule(String id, CitedValue value, String unit, String statement) {
    /** Reads a row with the columns rule, value, unit and statement. */
    static DeratingRule read(RowReader row) {
        String id = row.text("rule");
        CitedValue value = new CitedValue(row.plainNumber("value"), row.citation(id, "value"));
        return new DeratingRule(id, value, row.text("unit"), row.text("statement"));
    }
}
