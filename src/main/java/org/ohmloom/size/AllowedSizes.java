package org.ohmloom.size;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SizingRules.StockSize;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Gauge;

/**
 * The sizes of a family that may be chosen: those on the design rules' stock list. A family with no size on the list, as
 * when the list is in the other system, may be chosen from whole.
 */
final class AllowedSizes {

    private AllowedSizes() {}

    static ConductorFamily of(Harness harness, ConductorFamily family) {
        List<StockSize> stock = harness.rules().sizingRules().stock();
        if (stock.isEmpty()) {
            return family;
        }
        Set<Gauge> gauges = stock.stream().map(StockSize::gauge).collect(Collectors.toSet());
        List<ConductorRow> rows = family.rows().stream()
                .filter(row -> gauges.contains(row.gauge()))
                .toList();
        return rows.isEmpty() ? family : new ConductorFamily(family.id(), family.title(), family.system(), rows);
    }
}
