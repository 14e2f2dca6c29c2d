package org.ohmloom.tables;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Refusals;

/**
 * The factor on each conductor's current when several loaded conductors lie in one bundle.
 *
 * <p>Between rows the next row up counts, the smaller factor; a curve is read along the line between its points. Beyond the last row of a table that does not say "and
 * more", the factor falls with the square root of the count, which keeps the bundle's total heat at that of the last row.
 *
 * @param id           what files call it
 * @param title        what people call it
 * @param rows         its rows, fewest conductors first
 * @param largeFromMm2 the copper area from which the factors for large conductors hold, mm2; infinite when it has none
 * @param curve        whether the rows are points of a curve, so that a count between two lies on the line between them
 */
public record BundleFactors(String id, String title, List<BundleRow> rows, double largeFromMm2, boolean curve) {
    private static final List<Integer> LOADS = List.of(20, 40, 60, 80);

    /** Sorts the rows by count. */
    public BundleFactors {
        rows = rows.stream()
                .sorted(Comparator.comparingInt(BundleRow::upToConductors))
                .toList();
    }

    /** The factor for that many loaded conductors; 1 for one. */
    public CitedValue factor(int loadedConductors) {
        return factor(loadedConductors, 0);
    }

    /** The factor for that many loaded conductors, on a conductor of that copper area, mm2; 1 for one. */
    public CitedValue factor(int loadedConductors, double copperAreaMm2) {
        BundleRow first = rows.get(0);
        if (loadedConductors <= 1) {
            return new CitedValue(1, first.factor().citation().withRow("1 loaded conductor"));
        }
        for (int i = 0; i < rows.size(); i++) {
            BundleRow row = rows.get(i);
            if (row.upToConductors() >= loadedConductors) {
                return curve && i > 0 && row.upToConductors() > loadedConductors
                        ? between(rows.get(i - 1), row, loadedConductors)
                        : value(row, copperAreaMm2);
            }
        }
        BundleRow last = rows.get(rows.size() - 1);
        CitedValue end = value(last, copperAreaMm2);
        String text = String.format(
                Locale.ROOT,
                "%s x sqrt(%d/%d), beyond the table at the same total heat",
                end.citation().row(),
                last.upToConductors(),
                loadedConductors);
        return new CitedValue(
                end.value() * Math.sqrt((double) last.upToConductors() / loadedConductors),
                end.citation().withRow(text).noBetterThan(Status.COMPUTED));
    }

    /**
     * The factor for that many conductors of which that share of the total capacity is used, 0 to 1: between the curves
     * for full and partial load, full load where the table has no others.
     */
    public CitedValue factor(int conductors, double copperAreaMm2, double capacityFraction) {
        CitedValue full = factor(conductors, copperAreaMm2);
        double share = atLoad(conductors, capacityFraction) / atLoad(conductors, 1);
        if (share == 1) {
            return full;
        }
        String text = String.format(
                Locale.ROOT, "%s, %.0f %% of total capacity", full.citation().row(), 100 * capacityFraction);
        return new CitedValue(
                full.value() * share, full.citation().withRow(text).noBetterThan(Status.COMPUTED));
    }

    private double atLoad(int conductors, double capacityFraction) {
        BundleRow before = rows.get(0);
        for (BundleRow row : rows) {
            if (row.upToConductors() >= conductors) {
                double share = row.upToConductors() == before.upToConductors()
                        ? 1
                        : (double) (conductors - before.upToConductors())
                                / (row.upToConductors() - before.upToConductors());
                double low = before.factor(capacityFraction);
                return curve
                        ? low + Math.max(0, share) * (row.factor(capacityFraction) - low)
                        : row.factor(capacityFraction);
            }
            before = row;
        }
        return before.factor(capacityFraction);
    }

    private static CitedValue between(BundleRow fewer, BundleRow more, int count) {
        double share = (double) (count - fewer.upToConductors()) / (more.upToConductors() - fewer.upToConductors());
        double factor = fewer.factor().value()
                + share * (more.factor().value() - fewer.factor().value());
        String text = String.format(
                Locale.ROOT, "%d conductors, between %d and %d", count, fewer.upToConductors(), more.upToConductors());
        return new CitedValue(factor, more.factor().citation().withRow(text).noBetterThan(Status.COMPUTED));
    }

    private CitedValue value(BundleRow row, double copperAreaMm2) {
        return copperAreaMm2 >= largeFromMm2 ? row.largeFactor().orElse(row.factor()) : row.factor();
    }

    /**
     * Reads a sheet with the columns upToConductors (empty: and more) and factor, where it has them printed and
     * factorLarge with the head key "large from".
     */
    static BundleFactors read(SheetReader sheet) {
        List<BundleRow> rows = sheet.rows(row -> {
            int upTo = row.optionalText("upToConductors").isEmpty() ? Integer.MAX_VALUE : row.count("upToConductors");
            String text = row.optionalText("printed").orElse("up to " + upTo + " conductors");
            CitedValue factor = factor(row, "factor", text);
            Optional<CitedValue> large = row.optionalText("factorLarge").map(cell -> factor(row, "factorLarge", text));
            return new BundleRow(upTo, factor, large, byLoad(row, text));
        });
        String largeFrom = sheet.sheet().head().get("large from");
        double largeFromMm2 = largeFrom == null
                ? Double.POSITIVE_INFINITY
                : gauge(sheet, largeFrom).nominalAreaMm2();
        boolean curve = "curve".equals(sheet.sheet().head().get("between rows"));
        return new BundleFactors(sheet.sheet().id(), sheet.sheet().title(), rows, largeFromMm2, curve);
    }

    private static SortedMap<Integer, CitedValue> byLoad(RowReader row, String text) {
        SortedMap<Integer, CitedValue> byLoad = new TreeMap<>();
        for (int percent : LOADS) {
            String column = "load" + percent;
            row.optionalText(column).ifPresent(cell -> byLoad.put(percent, factor(row, column, text)));
        }
        return byLoad;
    }

    private static CitedValue factor(RowReader row, String column, String text) {
        double factor = row.positive(column, "1");
        if (factor > 1) {
            throw row.unfit(column, Refusals.text("the factor %s is above 1; write a factor of 1 or less", factor));
        }
        return new CitedValue(factor, row.citation(text, column));
    }

    private static Gauge gauge(SheetReader sheet, String text) {
        try {
            return Gauge.parse(text);
        } catch (IllegalArgumentException e) {
            throw new TableFormatException(
                    sheet.sheet().fileName(),
                    1,
                    "",
                    Refusals.text("'%s' is not a conductor size; write one as 8 AWG", text));
        }
    }
}
