package org.ohmloom.tables;

import java.util.Set;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

/**
 * How far along the conductor from its source a protective device may sit.
 *
 * @param basis          the design basis it belongs to
 * @param id             its name
 * @param situation      when it holds, in words
 * @param enclosed       whether it asks for a conductor sheathed or enclosed over the whole distance
 * @param atBattery      whether it holds only for a conductor from a battery
 * @param distanceMetres the largest distance, m, more than 0
 * @param citation       where it comes from
 */
public record PlacementRule(
        String basis,
        String id,
        Text situation,
        boolean enclosed,
        boolean atBattery,
        double distanceMetres,
        Citation citation) {
    private static final Set<String> APPLIES = Set.of("any", "enclosed", "battery", "battery enclosed");

    /** Whether the rule may be used for a conductor so laid. */
    public boolean holds(boolean conductorEnclosed, boolean fromBattery) {
        return (conductorEnclosed || !enclosed) && (fromBattery || !atBattery);
    }

    /** Reads a row with the columns basis, rule, situation, applies and distance. */
    static PlacementRule read(RowReader row) {
        String applies = row.text("applies");
        if (!APPLIES.contains(applies)) {
            throw row.unfit(
                    "applies",
                    Refusals.text("'%s' is not a case; write any, enclosed, battery or battery enclosed", applies));
        }
        String id = row.text("rule");
        return new PlacementRule(
                row.text("basis"),
                id,
                TableWords.text(row.text("situation")),
                applies.endsWith("enclosed"),
                applies.startsWith("battery"),
                row.positive("distance", "m"),
                row.citation(id, "distance"));
    }
}
