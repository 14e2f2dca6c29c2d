package org.ohmloom.tables;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The voltage drops a body of practice allows between source and load.
 *
 * @param id    what files call it
 * @param title what people call it
 * @param rows  its limits in file order
 */
public record AllowableDrops(String id, String title, List<DropLimit> rows) {
    /** A nominal voltage within this share of a listed one belongs to it: 12 V batteries make the 14 V system. */
    private static final double SAME_SYSTEM_SHARE = 0.2;

    /** Keeps an unmodifiable copy. */
    public AllowableDrops {
        rows = List.copyOf(rows);
    }

    /**
     * The drop allowed for a kind of load on a nominal voltage, V. Empty when the table lists neither that kind nor a
     * system of about that voltage.
     */
    public Optional<CitedValue> volts(double nominalVolts, String use) {
        return rows.stream()
                .filter(row -> row.use().equals(use) && distance(row, nominalVolts) <= SAME_SYSTEM_SHARE)
                .min(Comparator.comparingDouble(row -> distance(row, nominalVolts)))
                .map(row -> new CitedValue(
                        row.dropVolts().orElseGet(() -> row.dropFraction().orElse(0) * nominalVolts), row.citation()));
    }

    private static double distance(DropLimit row, double nominalVolts) {
        return row.systemVolts().isEmpty()
                ? 0
                : Math.abs(row.systemVolts().getAsDouble() - nominalVolts)
                        / row.systemVolts().getAsDouble();
    }

    static AllowableDrops read(SheetReader sheet) {
        return new AllowableDrops(sheet.sheet().id(), sheet.sheet().title(), sheet.rows(DropLimit::read));
    }
}
