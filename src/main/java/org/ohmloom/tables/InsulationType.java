package org.ohmloom.tables;

import java.util.Optional;
import org.ohmloom.words.Refusals;

/**
 * A kind of insulation and the conductor temperatures it stands.
 *
 * @param id             the standard's own name, as in "ISO 6722-1 class B"
 * @param title          what people call it
 * @param maximumCelsius highest continuous conductor temperature, C
 * @param minimumCelsius lowest temperature, C; negative infinity where the source lists none
 * @param citation       where the highest temperature comes from
 * @param conductivity   heat conductivity, W/mK, where the table states it
 */
public record InsulationType(
        String id,
        String title,
        double maximumCelsius,
        double minimumCelsius,
        Citation citation,
        Optional<CitedValue> conductivity) {

    /** Whether the source lists a lowest temperature. */
    public boolean listsMinimum() {
        return Double.isFinite(minimumCelsius);
    }

    /** Reads a row with the columns id, title, minimumCelsius (may be empty), maximumCelsius and (conductivity). */
    static InsulationType read(RowReader row) {
        String id = row.text("id");
        double minimum = row.optionalText("minimumCelsius").isEmpty()
                ? Double.NEGATIVE_INFINITY
                : row.number("minimumCelsius", "C");
        double maximum = row.number("maximumCelsius", "C");
        if (minimum >= maximum) {
            throw row.unfit(
                    "minimumCelsius", Refusals.text("the minimum is not below the maximum; check both temperatures"));
        }
        Optional<CitedValue> conductivity = row.optionalText("conductivity")
                .map(text -> new CitedValue(
                        row.positive("conductivity", "W/mK"),
                        row.citation(id, "conductivity").noBetterThan(Status.FROM_MEMORY)));
        return new InsulationType(
                id, row.text("title"), maximum, minimum, row.citation(id, "maximumCelsius"), conductivity);
    }
}
