package org.ohmloom.tables;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Published factors on an ampacity where the air is warmer or cooler than the ampacity table's.
 *
 * <p>Between rows the next warmer row counts; above the warmest there is no factor, and none where the table leaves the
 * cell empty (not allowed). At the base ambient the factor is 1.
 */
public final class AmbientFactors {
    private final String id;
    private final String title;
    private final double baseAmbientCelsius;
    private final TreeMap<Double, SortedMap<Double, CitedValue>> byAmbient = new TreeMap<>();
    private final Citation baseCitation;

    private AmbientFactors(SheetReader sheet) {
        id = sheet.sheet().id();
        title = sheet.sheet().title();
        baseAmbientCelsius = sheet.headNumber("ambient");
        SortedMap<Double, String> columns = sheet.temperatureColumns("factor");
        for (RowReader row : sheet.rows(row -> row)) {
            double ambient = row.number("ambient", "C");
            String text = String.format(Locale.ROOT, "%.0f C ambient", ambient);
            SortedMap<Double, CitedValue> factors = new TreeMap<>();
            columns.forEach((celsius, column) -> row.optionalText(column)
                    .ifPresent(cell -> factors.put(
                            celsius, new CitedValue(row.positive(column, "1"), row.citation(text, column)))));
            byAmbient.put(ambient, factors);
        }
        TableSheet table = sheet.sheet();
        baseCitation = new Citation(table.source(), table.edition(), table.table(), "base ambient", Status.PUBLISHED);
    }

    /** What files call it. */
    public String id() {
        return id;
    }

    /** What people call it. */
    public String title() {
        return title;
    }

    /** The air temperature at which the factor is 1, C. */
    public double baseAmbientCelsius() {
        return baseAmbientCelsius;
    }

    /** The factor for air of that temperature around insulation of that limit, both C; empty when there is none. */
    public Optional<CitedValue> factor(double ambientCelsius, double insulationCelsius) {
        Map.Entry<Double, SortedMap<Double, CitedValue>> warmer = byAmbient.ceilingEntry(ambientCelsius);
        boolean baseIsNearer =
                baseAmbientCelsius >= ambientCelsius && (warmer == null || baseAmbientCelsius < warmer.getKey());
        if (baseIsNearer) {
            return Optional.of(new CitedValue(1, baseCitation));
        }
        if (warmer == null) {
            return Optional.empty();
        }
        SortedMap<Double, CitedValue> fitting = warmer.getValue().headMap(Math.nextUp(insulationCelsius));
        return fitting.isEmpty() ? Optional.empty() : Optional.of(fitting.get(fitting.lastKey()));
    }

    /** Reads a sheet with the columns ambient and factor105C and the like, and the head key ambient for the base. */
    static AmbientFactors read(SheetReader sheet) {
        return new AmbientFactors(sheet);
    }
}
