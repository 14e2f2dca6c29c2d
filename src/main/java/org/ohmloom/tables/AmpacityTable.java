package org.ohmloom.tables;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.units.Gauge;

/**
 * A published table of the current a conductor may carry continuously.
 *
 * <p>A conductor that is not in the table takes the largest row whose copper area does not exceed its own: on the safe
 * side, and still a row that can be shown. The column is the hottest that is not above the insulation's limit.
 *
 * @param id                 what files call it
 * @param title              what people call it
 * @param baseAmbientCelsius air temperature the table holds for, C
 * @param grouping           in words, what grouping is already in its currents
 * @param groupedConductors  how many conductors in a bundle are already in its currents, 1 or more
 * @param rows               its rows, thinnest copper first
 */
public record AmpacityTable(
        String id,
        String title,
        double baseAmbientCelsius,
        String grouping,
        int groupedConductors,
        List<AmpacityRow> rows) {
    /** Copper areas this much apart, as a ratio, are the same area. */
    private static final double SAME_AREA = 1e-9;

    /** Sorts the rows by copper area. */
    public AmpacityTable {
        rows = rows.stream()
                .sorted(Comparator.comparingDouble(AmpacityRow::copperAreaMm2))
                .toList();
    }

    /**
     * The current of a size, A: its own row, or by the nominal area where the table lacks it. Empty when every row is
     * thicker or every column hotter than asked.
     */
    public Optional<CitedValue> amps(Gauge gauge, double insulationCelsius) {
        return ownRow(gauge)
                .map(row -> amps(row, insulationCelsius, ""))
                .orElseGet(() -> amps(gauge.nominalAreaMm2(), insulationCelsius));
    }

    /** The current of a conductor, A: its own row, or by its assured copper area where the table lacks its size. */
    public Optional<CitedValue> amps(ConductorRow conductor, double insulationCelsius) {
        return ownRow(conductor.gauge())
                .map(row -> amps(row, insulationCelsius, ""))
                .orElseGet(() -> amps(conductor.assuredCopperAreaMm2(), insulationCelsius));
    }

    /** The current of the largest row whose copper area does not exceed the given one, A; empty when there is none. */
    public Optional<CitedValue> amps(double copperAreaMm2, double insulationCelsius) {
        String why = String.format(Locale.ROOT, " (the largest row not above %.4g mm2 of copper)", copperAreaMm2);
        return rows.stream()
                .filter(row -> row.copperAreaMm2() <= copperAreaMm2 * (1 + SAME_AREA))
                .reduce((thinner, thicker) -> thicker)
                .flatMap(row -> amps(row, insulationCelsius, why));
    }

    /**
     * The current of a conductor, A, where the table is a line through its rows: its own row, or along a power of the copper
     * area between the rows next to it; the last row above them all; empty below the first.
     */
    public Optional<CitedValue> ampsAlong(ConductorRow conductor, double insulationCelsius) {
        double areaMm2 = conductor.areaIsNominalLabel() ? conductor.copperAreaMm2() : conductor.assuredCopperAreaMm2();
        Optional<CitedValue> below = amps(conductor, insulationCelsius);
        Optional<AmpacityRow> lower =
                rows.stream().filter(row -> row.copperAreaMm2() <= areaMm2).reduce((thinner, thicker) -> thicker);
        Optional<AmpacityRow> upper =
                rows.stream().filter(row -> row.copperAreaMm2() > areaMm2).findFirst();
        if (ownRow(conductor.gauge()).isPresent() || below.isEmpty() || lower.isEmpty() || upper.isEmpty()) {
            return below;
        }
        double share = Math.log(areaMm2 / lower.get().copperAreaMm2())
                / Math.log(upper.get().copperAreaMm2() / lower.get().copperAreaMm2());
        return amps(lower.get(), insulationCelsius, "").flatMap(low -> amps(upper.get(), insulationCelsius, "")
                .map(high -> new CitedValue(
                        low.value() * Math.pow(high.value() / low.value(), share),
                        high.citation()
                                .withRow(String.format(
                                        Locale.ROOT,
                                        "between %s and %s for %.4g mm2",
                                        lower.get().gauge().text(),
                                        high.citation().row(),
                                        areaMm2))
                                .noBetterThan(Status.COMPUTED))));
    }

    /**
     * The conductor temperature of the column that insulation of that limit is read from, both C: the temperature to
     * reckon with when the current is carried to another ambient. Empty when every column is hotter.
     */
    public OptionalDouble columnCelsius(double insulationCelsius) {
        return rows.stream()
                .flatMap(row -> row.ampsByCelsius().keySet().stream())
                .mapToDouble(Double::doubleValue)
                .filter(celsius -> celsius <= insulationCelsius)
                .max();
    }

    private Optional<AmpacityRow> ownRow(Gauge gauge) {
        return rows.stream().filter(row -> row.gauge().equals(gauge)).findFirst();
    }

    private static Optional<CitedValue> amps(AmpacityRow row, double insulationCelsius, String why) {
        SortedMap<Double, CitedValue> fitting = row.ampsByCelsius().headMap(Math.nextUp(insulationCelsius));
        if (fitting.isEmpty()) {
            return Optional.empty();
        }
        CitedValue amps = fitting.get(fitting.lastKey());
        String text = row.gauge().text() + why + String.format(Locale.ROOT, ", %.0f C column", fitting.lastKey());
        return Optional.of(new CitedValue(amps.value(), amps.citation().withRow(text)));
    }

    /**
     * Reads a sheet with the columns gauge and amps105C and the like, where it has it area, and the head keys ambient,
     * grouping and "grouped conductors".
     */
    static AmpacityTable read(SheetReader sheet) {
        SortedMap<Double, String> columns = sheet.temperatureColumns("amps");
        List<AmpacityRow> rows = sheet.rows(row -> {
            Gauge gauge = row.gauge("gauge");
            SortedMap<Double, CitedValue> amps = new TreeMap<>();
            columns.forEach((celsius, column) -> {
                if (row.optionalText(column).isPresent()) {
                    amps.put(celsius, new CitedValue(row.positive(column, "A"), row.citation(gauge.text(), column)));
                }
            });
            double area = row.optionalPositive("area", "mm2").orElse(gauge.nominalAreaMm2());
            return new AmpacityRow(gauge, area, amps);
        });
        return new AmpacityTable(
                sheet.sheet().id(),
                sheet.sheet().title(),
                sheet.headNumber("ambient"),
                sheet.headText("grouping"),
                (int) Math.max(1, sheet.headNumber("grouped conductors")),
                rows);
    }
}
