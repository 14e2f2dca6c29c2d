package org.ohmloom.graph;

import java.util.Optional;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.WireTables;

/** Gives the typical cold resistance of a protective device that was not measured. */
@FunctionalInterface
public interface FuseOhms {

    /** Knows no resistance at all; every device then takes the fallback of {@link NetworkBuilder}. */
    FuseOhms NONE = (series, ratingAmps) -> Optional.empty();

    /** The typical resistances of the tables. */
    static FuseOhms of(WireTables tables) {
        return (series, ratingAmps) -> tables.fuseSeries(series).flatMap(type -> type.coldResistanceOhms(ratingAmps));
    }

    /**
     * Typical cold resistance, ohm, more than 0, with its source; empty when it is not listed.
     *
     * @param series     the standard's own type, for example {@code ISO 8820-3 type C}
     * @param ratingAmps rated current, A
     */
    Optional<CitedValue> coldOhms(String series, double ratingAmps);
}
