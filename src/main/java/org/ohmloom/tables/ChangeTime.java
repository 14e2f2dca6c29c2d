package org.ohmloom.tables;

/**
 * How fast what a sort of sensor measures can change.
 *
 * @param sensing             how the sensor works, as in a harness file
 * @param timeConstantSeconds time constant of the fastest credible change, s
 * @param words               what is meant, for people
 */
public record ChangeTime(String sensing, CitedValue timeConstantSeconds, String words) {

    /** Reads a row with the columns sensing, timeConstant and words. */
    static ChangeTime read(RowReader row) {
        String sensing = row.text("sensing");
        return new ChangeTime(
                sensing,
                new CitedValue(row.positive("timeConstant", "s"), row.citation(sensing, "timeConstant")),
                row.text("words"));
    }
}
