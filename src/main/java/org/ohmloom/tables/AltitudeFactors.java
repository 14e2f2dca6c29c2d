package org.ohmloom.tables;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * The factor on a current in thin air: straight between the points of a chart, 1 at sea level and below; above the highest
 * point along its last stretch.
 *
 * @param id     what files call it
 * @param points its points, lowest first
 */
public record AltitudeFactors(String id, List<Point> points) {

    /** Sorts the points. */
    public AltitudeFactors {
        points = points.stream()
                .sorted(Comparator.comparingDouble(Point::altitudeMetres))
                .toList();
    }

    /**
     * One point.
     *
     * @param altitudeMetres altitude, m, more than 0
     * @param factor         the factor there
     */
    public record Point(double altitudeMetres, CitedValue factor) {}

    /** The factor at an altitude, m. */
    public CitedValue factor(double altitudeMetres) {
        double lowMetres = 0;
        double lowFactor = 1;
        Point upper = points.get(0);
        for (Point point : points.subList(1, points.size())) {
            if (altitudeMetres > upper.altitudeMetres()) {
                lowMetres = upper.altitudeMetres();
                lowFactor = upper.factor().value();
                upper = point;
            }
        }
        double share = Math.max(0, altitudeMetres - lowMetres) / (upper.altitudeMetres() - lowMetres);
        double factor = Math.max(0.1, lowFactor + share * (upper.factor().value() - lowFactor));
        String row = String.format(Locale.ROOT, "%.0f m, between the points of the chart", altitudeMetres);
        return new CitedValue(factor, upper.factor().citation().withRow(row).noBetterThan(Status.COMPUTED));
    }

    /** Reads a sheet with the columns altitude and factor. */
    static AltitudeFactors read(SheetReader sheet) {
        List<Point> points = new ArrayList<>(sheet.rows(row -> new Point(
                row.positive("altitude", "m"),
                new CitedValue(row.positive("factor", "1"), row.citation(row.text("altitude"), "factor")))));
        return new AltitudeFactors(sheet.sheet().id(), points);
    }
}
