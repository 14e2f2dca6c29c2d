package org.ohmloom.tables;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;
import org.ohmloom.words.Refusals;

/**
 * The conductor sizes of one standard, with their listed resistances.
 *
 * @param id     what files call it, as in "iso-6722-1"
 * @param title  what people call it
 * @param system how its sizes are labelled
 * @param rows   its sizes, thinnest copper first
 */
public record ConductorFamily(String id, String title, GaugeSystem system, List<ConductorRow> rows) {
    /** Sorts the rows by copper area. */
    public ConductorFamily {
        rows = rows.stream()
                .sorted(Comparator.comparingDouble(ConductorRow::copperAreaMm2))
                .toList();
    }

    /** The row of this very size, when the family has it. */
    public Optional<ConductorRow> row(Gauge gauge) {
        return rows.stream().filter(row -> row.gauge().equals(gauge)).findFirst();
    }

    /**
     * Reads a sheet with the columns gauge and resistance, and where it has them area and outsideDiameter. All rows
     * must be of one system. Without an area, it is the nominal one of the gauge.
     */
    static ConductorFamily read(SheetReader sheet) {
        List<ConductorRow> rows = sheet.rows(row -> {
            Gauge gauge = row.gauge("gauge");
            return new ConductorRow(
                    gauge,
                    row.optionalPositive("area", "mm2").orElse(gauge.nominalAreaMm2()),
                    row.positive("resistance", "ohm/m"),
                    row.optionalPositive("outsideDiameter", "mm"),
                    row.citation(gauge.text(), "resistance"));
        });
        GaugeSystem system = rows.get(0).gauge().system();
        sheet.rows(row -> {
            if (row.gauge("gauge").system() != system) {
                throw row.unfit(
                        "gauge", Refusals.text("the size is of another system than the first row's; split the table"));
            }
            return row;
        });
        return new ConductorFamily(sheet.sheet().id(), sheet.sheet().title(), system, rows);
    }
}
