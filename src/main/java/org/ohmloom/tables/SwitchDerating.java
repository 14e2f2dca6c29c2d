package org.ohmloom.tables;

/**
 * How much larger than the load's current a switch must be rated.
 *
 * @param systemVolts system voltage, V
 * @param load        kind of load: lamp, inductive, resistive
 * @param factor      rated current of the switch over the load's continuous current
 */
public record SwitchDerating(double systemVolts, String load, CitedValue factor) {
    /** Reads a row with the columns systemVolts, load and factor. */
    static SwitchDerating read(RowReader row) {
        String load = row.text("load");
        String text = row.text("systemVolts") + " V " + load;
        CitedValue factor = new CitedValue(row.positive("factor", "1"), row.citation(text, "factor"));
        return new SwitchDerating(row.positive("systemVolts", "V"), load, factor);
    }
}
