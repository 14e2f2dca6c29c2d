package org.ohmloom.bundle;

import java.util.Optional;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.WireTables;

/**
 * Outside diameters of insulated wires, where a table lists them.
 *
 * @param tables the published tables
 */
public record WireDiameters(WireTables tables) {

    /**
     * The outside diameter, mm: that listed for the insulation and size, otherwise the one the conductor family lists
     * beside its resistance. Empty when neither is listed; it is never guessed from the copper.
     *
     * @param insulation insulation type of the wire
     * @param row        its conductor
     */
    public Optional<CitedValue> outsideMm(String insulation, ConductorRow row) {
        Optional<CitedValue> own = tables.outsideDiameterMm(insulation, row.gauge());
        if (own.isPresent() || row.outsideDiameterMm().isEmpty()) {
            return own;
        }
        return Optional.of(new CitedValue(row.outsideDiameterMm().getAsDouble(), row.citation()));
    }
}
