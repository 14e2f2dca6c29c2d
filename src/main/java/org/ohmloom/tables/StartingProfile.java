package org.ohmloom.tables;

/**
 * Supply voltage that equipment of a severity must stand while the engine is started.
 *
 * @param level           the severity
 * @param nominalVolts    nominal voltage of the system, V
 * @param lowestVolts     voltage of the first dip, V
 * @param crankingVolts   voltage while the engine is turned after that, V
 * @param crankingSeconds how long that lasts, s
 */
public record StartingProfile(
        String level, double nominalVolts, CitedValue lowestVolts, CitedValue crankingVolts, double crankingSeconds) {

    /** Reads a row with the columns level, nominalVolts, lowestVolts, crankingVolts and crankingTime. */
    static StartingProfile read(RowReader row) {
        String text = "level " + row.text("level");
        return new StartingProfile(
                row.text("level"),
                row.positive("nominalVolts", "V"),
                new CitedValue(row.positive("lowestVolts", "V"), row.citation(text, "lowestVolts")),
                new CitedValue(row.positive("crankingVolts", "V"), row.citation(text, "crankingVolts")),
                row.positive("crankingTime", "s"));
    }
}
