package org.ohmloom.tables;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ohmloom.units.Gauge;

/**
 * A chart of the largest breaker and fuse for each conductor size.
 *
 * @param id    what files call it
 * @param title what people call it
 * @param rows  its rows, thinnest conductor first
 */
public record ProtectorChart(String id, String title, List<ProtectorRow> rows) {
    /** Sorts the rows by nominal copper area. */
    public ProtectorChart {
        rows = rows.stream()
                .sorted(Comparator.comparingDouble(row -> row.gauge().nominalAreaMm2()))
                .toList();
    }

    /** The row of a size, or the thickest row not above its nominal area; empty when it is thinner than all. */
    public Optional<ProtectorRow> row(Gauge gauge) {
        return rows.stream()
                .filter(row -> row.gauge().nominalAreaMm2() <= gauge.nominalAreaMm2())
                .reduce((thinner, thicker) -> thicker);
    }

    static ProtectorChart read(SheetReader sheet) {
        return new ProtectorChart(sheet.sheet().id(), sheet.sheet().title(), sheet.rows(ProtectorRow::read));
    }
}
