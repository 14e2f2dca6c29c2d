package org.ohmloom.tables;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A unit as table files declare it, as a multiple of the canonical unit of its dimension.
 *
 * @param dimension the canonical unit it reduces to, which stands for the dimension
 * @param timesRatio    the multiple is this number ...
 * @param dividedRatio  ... over this one, so that decimal multiples stay exact
 */
record TableUnit(String dimension, double timesRatio, double dividedRatio) {
    private static final double MM2_IN_A_CIRCULAR_MIL = Math.PI / 4 * 0.0254 * 0.0254;

    private static final Map<String, TableUnit> KNOWN = Map.ofEntries(
            Map.entry("mm2", new TableUnit("mm2", 1, 1)),
            Map.entry("circular mils", new TableUnit("mm2", MM2_IN_A_CIRCULAR_MIL, 1)),
            Map.entry("ohm/m", new TableUnit("ohm/m", 1, 1)),
            Map.entry("mohm/m", new TableUnit("ohm/m", 1, 1000)),
            Map.entry("ohm/km", new TableUnit("ohm/m", 1, 1000)),
            Map.entry("ohm/1000 ft", new TableUnit("ohm/m", 1, 304.8)),
            Map.entry("m", new TableUnit("m", 1, 1)),
            Map.entry("mm", new TableUnit("m", 1, 1000)),
            Map.entry("in", new TableUnit("m", 254, 10000)),
            Map.entry("mil", new TableUnit("m", 254, 10_000_000)),
            Map.entry("ft", new TableUnit("m", 3048, 10000)),
            Map.entry("A", new TableUnit("A", 1, 1)),
            Map.entry("V", new TableUnit("V", 1, 1)),
            Map.entry("mV", new TableUnit("V", 1, 1000)),
            Map.entry("ohm", new TableUnit("ohm", 1, 1)),
            Map.entry("mohm", new TableUnit("ohm", 1, 1000)),
            Map.entry("s", new TableUnit("s", 1, 1)),
            Map.entry("bit/s", new TableUnit("bit/s", 1, 1)),
            Map.entry("kbit/s", new TableUnit("bit/s", 1000, 1)),
            Map.entry("W/mK", new TableUnit("W/mK", 1, 1)),
            Map.entry("C", new TableUnit("C", 1, 1)),
            Map.entry("A2s", new TableUnit("A2s", 1, 1)),
            Map.entry("N", new TableUnit("N", 1, 1)),
            Map.entry("1", new TableUnit("1", 1, 1)),
            Map.entry("%", new TableUnit("1", 1, 100)));

    /** The unit of that name, when it is known. */
    static Optional<TableUnit> of(String name) {
        return Optional.ofNullable(KNOWN.get(name));
    }

    /** Converts a number in this unit to the target unit of the same dimension. */
    double convert(double number, TableUnit target) {
        return number * (timesRatio * target.dividedRatio) / (dividedRatio * target.timesRatio);
    }

    /** The known units of the same dimension, for messages. */
    static String choices(String dimension) {
        return KNOWN.entrySet().stream()
                .filter(entry -> entry.getValue().dimension.equals(dimension))
                .map(Map.Entry::getKey)
                .sorted()
                .collect(Collectors.joining(", "));
    }
}
