package org.ohmloom.size;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.bundle.CopperMass;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SizingRules.StockSize;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/**
 * What a metre of a size costs: its price where the stock list has one for every size, otherwise the mass of its copper.
 */
final class UnitCost {
    private final CopperMass copper;
    private final Map<Gauge, Double> prices;

    private UnitCost(CopperMass copper, Map<Gauge, Double> prices) {
        this.copper = copper;
        this.prices = prices;
    }

    /** The measure for some sizes of a harness. */
    static UnitCost of(Harness harness, WireTables tables, Iterable<ConductorRow> rows) {
        Map<Gauge, Double> prices = new HashMap<>();
        List<StockSize> stock = harness.rules().sizingRules().stock();
        stock.forEach(size -> size.pricePerMetre().ifPresent(price -> prices.put(size.gauge(), price)));
        boolean all = !prices.isEmpty();
        for (ConductorRow row : rows) {
            all &= prices.containsKey(row.gauge());
        }
        return new UnitCost(new CopperMass(tables.copper().density()), all ? prices : Map.of());
    }

    boolean isPrice() {
        return !prices.isEmpty();
    }

    /** Cost of a metre, in money or kg; a size without a price costs nothing then. */
    double perMetre(ConductorRow row) {
        return isPrice() ? Optional.ofNullable(prices.get(row.gauge())).orElse(0.0) : kilograms(row, 1);
    }

    /** Copper in a length of a size, kg. */
    double kilograms(ConductorRow row, double lengthMetres) {
        return copper.kilograms(row, lengthMetres);
    }
}
