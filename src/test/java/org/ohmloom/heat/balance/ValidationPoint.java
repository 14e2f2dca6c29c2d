package org.ohmloom.heat.balance;

import java.util.Locale;

/**
 * One published point and what we predict for it.
 *
 * @param name        what the point is
 * @param unit        unit of both values
 * @param published   the published value
 * @param predicted   ours
 * @param lowPercent  most we may lie below, as a negative percentage
 * @param highPercent most we may lie above, percent
 */
record ValidationPoint(
        String name, String unit, double published, double predicted, double lowPercent, double highPercent) {

    double errorPercent() {
        return 100 * (predicted / published - 1);
    }

    boolean holds() {
        return errorPercent() >= lowPercent && errorPercent() <= highPercent;
    }

    String line() {
        return String.format(
                Locale.ROOT,
                "| %s | %s | %s | %+.1f %% | %+.1f to %+.1f %% |",
                name,
                digits(published) + " " + unit,
                digits(predicted) + " " + unit,
                errorPercent(),
                lowPercent,
                highPercent);
    }

    private static String digits(double value) {
        double size = Math.abs(value);
        return String.format(
                Locale.ROOT, size >= 100 ? "%.0f" : size >= 10 ? "%.1f" : size >= 1 ? "%.2f" : "%.3f", value);
    }
}
