package org.ohmloom.heat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.InsulationType;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/**
 * Dimensions of insulated conductors for the heat balance.
 *
 * <p>Outside diameter: as listed for the insulation and size, otherwise as the conductor family lists it; a size neither
 * lists is scaled from the nearest one by the root of the area. The diameter over the strands is 1.15 times that of solid
 * copper of the listed resistance (common practice). For heat only: these estimates are never shown as dimensions to
 * build by. Safe for any number of threads.
 */
public final class WireShapes {

    private static final double STRANDS_OVER_SOLID = 1.15;
    private static final double LEAST_WALL_RATIO = 1.1;

    private final WireTables tables;
    private final Map<Key, WireShape> known = new ConcurrentHashMap<>();

    private record Key(ConductorRow row, Optional<InsulationType> insulation) {}

    /** A listed outside diameter of some size, mm. */
    private record Listed(Gauge gauge, double outsideMm) {}

    /** Shapes by those tables. */
    public WireShapes(WireTables tables) {
        this.tables = tables;
    }

    /** The shape of a conductor with an insulation; the usual heat conductivity where the insulation is not known. */
    public WireShape of(ConductorRow row, Optional<InsulationType> insulation) {
        return known.computeIfAbsent(new Key(row, insulation), this::find);
    }

    private WireShape find(Key key) {
        ConductorRow row = key.row();
        double copperMm2 = row.assuredCopperAreaMm2();
        double strandsMm = STRANDS_OVER_SOLID * Math.sqrt(4 * copperMm2 / Math.PI);
        Listed nearest = nearest(row, key.insulation());
        boolean own = nearest.gauge().equals(row.gauge());
        double outsideMm = nearest.outsideMm()
                * Math.sqrt(row.gauge().nominalAreaMm2() / nearest.gauge().nominalAreaMm2());
        outsideMm = Math.max(outsideMm, strandsMm * LEAST_WALL_RATIO);
        double conductivity = key.insulation()
                .flatMap(InsulationType::conductivity)
                .map(CitedValue::value)
                .orElse(RoundWire.USUAL_INSULATION);
        RoundWire wire = new RoundWire(row.ohmsPerMetreAt20Celsius(), copperMm2, strandsMm, outsideMm, conductivity);
        String words = String.format(
                Locale.ROOT,
                "outside %.2f mm %s, insulation %s W/mK",
                outsideMm,
                own ? "as listed" : "scaled from " + nearest.gauge().text(),
                conductivity);
        return new WireShape(wire, words);
    }

    private Listed nearest(ConductorRow row, Optional<InsulationType> insulation) {
        List<Listed> listed = new ArrayList<>();
        insulation.ifPresent(type -> tables.outsideDiameters().stream()
                .filter(each -> each.series().equals(type.id()))
                .forEach(each ->
                        listed.add(new Listed(each.gauge(), each.diameterMm().value()))));
        if (listed.isEmpty()) {
            row.outsideDiameterMm().ifPresent(diameter -> listed.add(new Listed(row.gauge(), diameter)));
        }
        if (listed.isEmpty()) {
            tables.families().stream()
                    .flatMap(family -> family.rows().stream())
                    .forEach(each -> each.outsideDiameterMm()
                            .ifPresent(diameter -> listed.add(new Listed(each.gauge(), diameter))));
        }
        return listed.stream()
                .min(Comparator.comparingDouble(each -> Math.abs(
                        Math.log(each.gauge().nominalAreaMm2() / row.gauge().nominalAreaMm2()))))
                .orElseGet(() ->
                        new Listed(row.gauge(), 1.6 * Math.sqrt(4 * row.gauge().nominalAreaMm2() / Math.PI)));
    }
}
