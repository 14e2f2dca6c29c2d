package org.ohmloom.bundle;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.Status;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/**
 * Outside diameters of the wires of one harness: listed where a table has them, otherwise scaled from the nearest listed
 * size by the root of the areas and said to be estimated. Empty while a wire's size is open. Keeps what it found; for one
 * thread.
 */
public final class Diameters {
    private final WireTables tables;
    private final DesignRules rules;
    private final ConductorRows rows;
    private final Map<Key, Known> known = new HashMap<>();

    private record Key(String insulation, ConductorRow row) {}

    /**
     * A diameter.
     *
     * @param millimetres over the insulation, mm
     * @param isListed    whether a table lists it for this wire; estimated otherwise
     * @param citation    the row it is from
     */
    public record Known(double millimetres, boolean isListed, Citation citation) {}

    private record Listed(Gauge gauge, CitedValue outsideMm) {}

    /**
     * Diameters by tables.
     *
     * @param tables published tables
     * @param rules  name the insulation of wires that name none
     * @param rows   the conductors of the wires
     */
    public Diameters(WireTables tables, DesignRules rules, ConductorRows rows) {
        this.tables = tables;
        this.rules = rules;
        this.rows = rows;
    }

    /** The outside diameter of a wire. */
    public Optional<Known> of(Wire wire) {
        String insulation = wire.insulation().orElse(rules.insulation());
        return rows.of(wire).map(row -> known.computeIfAbsent(new Key(insulation, row), this::find));
    }

    private Known find(Key key) {
        Optional<CitedValue> listed = new WireDiameters(tables).outsideMm(key.insulation(), key.row());
        if (listed.isPresent()) {
            return new Known(listed.get().value(), true, listed.get().citation());
        }
        double areaMm2 = key.row().gauge().nominalAreaMm2();
        Comparator<Listed> nearest = Comparator.comparingDouble(
                each -> Math.abs(Math.log(each.gauge().nominalAreaMm2() / areaMm2)));
        Listed from = series(key.insulation())
                .min(nearest)
                .or(() -> families().min(nearest))
                .orElseThrow(() -> new IllegalStateException("no table lists an outside diameter"));
        double scaled =
                from.outsideMm().value() * Math.sqrt(areaMm2 / from.gauge().nominalAreaMm2());
        Citation citation = from.outsideMm().citation();
        return new Known(
                scaled,
                false,
                new Citation(
                        citation.document(),
                        citation.edition(),
                        citation.table(),
                        from.gauge().text() + ", scaled by the root of the areas to "
                                + key.row().gauge().text(),
                        citation.status().weaker(Status.COMPUTED)));
    }

    private Stream<Listed> series(String insulation) {
        return tables.outsideDiameters().stream()
                .filter(each -> each.series().equals(insulation))
                .map(each -> new Listed(each.gauge(), each.diameterMm()));
    }

    private Stream<Listed> families() {
        return tables.families().stream()
                .flatMap(family -> family.rows().stream())
                .filter(row -> row.outsideDiameterMm().isPresent())
                .map(row -> new Listed(
                        row.gauge(), new CitedValue(row.outsideDiameterMm().getAsDouble(), row.citation())));
    }
}
