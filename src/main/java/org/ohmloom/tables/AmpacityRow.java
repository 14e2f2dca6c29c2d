package org.ohmloom.tables;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.Require;

/**
 * The currents one conductor size may carry.
 *
 * @param gauge         its size label
 * @param copperAreaMm2 copper area, mm2, more than 0: the listed one, or the nominal one of the gauge
 * @param ampsByCelsius current in A by the temperature in Celsius of the column it stands in
 */
public record AmpacityRow(Gauge gauge, double copperAreaMm2, SortedMap<Double, CitedValue> ampsByCelsius) {
    /** Keeps an unmodifiable copy. */
    public AmpacityRow {
        Require.positive(copperAreaMm2, "copper area in mm2");
        ampsByCelsius = Collections.unmodifiableSortedMap(new TreeMap<>(ampsByCelsius));
    }
}
