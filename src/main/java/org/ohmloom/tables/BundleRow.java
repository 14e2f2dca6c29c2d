package org.ohmloom.tables;

import java.util.Collections;
import java.util.Comparator;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The factor of one row of a bundle table.
 *
 * @param upToConductors the most conductors it holds for; {@link Integer#MAX_VALUE} for "and more"
 * @param factor         the factor on the current of each conductor, more than 0, at most 1
 * @param largeFactor    the factor for large conductors, where the table tells them apart
 * @param byLoad         factors for less than full load, by percent of total capacity, where the table has them
 */
public record BundleRow(
        int upToConductors,
        CitedValue factor,
        Optional<CitedValue> largeFactor,
        SortedMap<Integer, CitedValue> byLoad) {

    /** A row without factors for partial load. */
    public BundleRow(int upToConductors, CitedValue factor, Optional<CitedValue> largeFactor) {
        this(upToConductors, factor, largeFactor, Collections.emptySortedMap());
    }

    /** Keeps an unmodifiable copy. */
    public BundleRow {
        byLoad = Collections.unmodifiableSortedMap(new TreeMap<>(byLoad));
    }

    /** The factor when that share of the total capacity is used, straight between the columns; full load without them. */
    double factor(double capacityFraction) {
        double percent = 100 * Math.max(0, Math.min(1, capacityFraction));
        double lowPercent = 100;
        double low = factor.value();
        if (byLoad.isEmpty() || percent >= 100) {
            return low;
        }
        for (int column :
                byLoad.keySet().stream().sorted(Comparator.reverseOrder()).toList()) {
            double value = byLoad.get(column).value();
            if (percent >= column) {
                return value + (percent - column) / (lowPercent - column) * (low - value);
            }
            lowPercent = column;
            low = value;
        }
        return low;
    }
}
