package org.ohmloom.tables;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The share of its rating a fuse carries at an air temperature.
 *
 * @param ambientCelsius air temperature, C
 * @param share          share of the rating
 */
public record AmbientShare(double ambientCelsius, CitedValue share) {
    /** Reads a row with the columns type, ambient and share. */
    static AmbientShare read(RowReader row) {
        String text = row.text("type") + " at " + row.text("ambient") + " C";
        return new AmbientShare(
                row.number("ambient", "C"), new CitedValue(row.positive("share", "1"), row.citation(text, "share")));
    }

    /**
     * The share at a temperature: straight between two points, the coolest point's below it, along the last two points
     * beyond the hottest but never below 0. Empty without points.
     */
    static Optional<CitedValue> at(List<AmbientShare> points, double celsius) {
        List<AmbientShare> sorted = points.stream()
                .sorted(Comparator.comparingDouble(AmbientShare::ambientCelsius))
                .toList();
        if (sorted.isEmpty() || sorted.size() == 1 || celsius <= sorted.get(0).ambientCelsius()) {
            return sorted.stream().findFirst().map(AmbientShare::share);
        }
        int upper = 1;
        while (upper < sorted.size() - 1 && sorted.get(upper).ambientCelsius() < celsius) {
            upper++;
        }
        AmbientShare cool = sorted.get(upper - 1);
        AmbientShare hot = sorted.get(upper);
        double slopePerKelvin =
                (hot.share().value() - cool.share().value()) / (hot.ambientCelsius - cool.ambientCelsius);
        double value = Math.max(0, cool.share().value() + slopePerKelvin * (celsius - cool.ambientCelsius));
        Citation citation = hot.share().citation();
        return Optional.of(new CitedValue(
                value, citation.noBetterThan(cool.share().citation().status())));
    }
}
