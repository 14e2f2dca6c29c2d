package org.ohmloom.units;

import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Finds units: the canonical one of a dimension, or the one a person spelled.
 *
 * <p>A spelling is first looked for as it stands, then without regard to case, except that a leading m is never taken
 * for M or the reverse: "5 MA" is not five milliamperes. The expected dimension settles a letter that two dimensions
 * share ("F" is farad or Fahrenheit).
 */
final class Units {
    /** Area of a thousand circles of 0.001 inch diameter, mm2: pi / 4 x (0.0254 mm)2 x 1000. */
    static final double SQUARE_MILLIMETRES_IN_KILO_CIRCULAR_MIL = Math.PI / 4 * 0.64516;

    private static final int SHORTEST_WORD = 5;
    private static final Map<Dimension, Unit> CANONICAL = canonicalUnits();
    private static final Map<Dimension, Map<String, Unit>> SPELLINGS = spellings();

    private Units() {}

    /** The unit of the dimension that converts to itself. */
    static Unit canonical(Dimension dimension) {
        Unit unit = CANONICAL.get(dimension);
        if (unit == null) {
            throw new IllegalStateException("no canonical unit for " + dimension);
        }
        return unit;
    }

    /** The unit of the expected dimension with this spelling (spaces removed), if there is one. */
    static Optional<Unit> find(String spelling, Dimension expected) {
        Map<String, Unit> known = SPELLINGS.getOrDefault(expected, Map.of());
        Unit exact = known.get(spelling);
        if (exact != null) {
            return Optional.of(exact);
        }
        return known.entrySet().stream()
                .filter(entry -> sameButForCase(spelling, entry.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** A unit of any dimension with exactly this spelling, in the order of {@link Dimension}. */
    static Optional<Unit> findAnywhere(String spelling) {
        for (Dimension dimension : Dimension.values()) {
            Unit unit = SPELLINGS.getOrDefault(dimension, Map.of()).get(spelling);
            if (unit != null) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    private static boolean sameButForCase(String typed, String spelling) {
        if (typed.isEmpty() || !lower(typed).equals(lower(spelling))) {
            return false;
        }
        boolean word = spelling.length() >= SHORTEST_WORD && spelling.equals(lower(spelling));
        boolean prefixAtStake = Character.toLowerCase(typed.charAt(0)) == 'm';
        return word || !prefixAtStake || typed.charAt(0) == spelling.charAt(0);
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }

    private static Map<Dimension, Unit> canonicalUnits() {
        Map<Dimension, Unit> canonical = new EnumMap<>(Dimension.class);
        for (Unit unit : Unit.values()) {
            if (unit.isCanonical()) {
                canonical.put(unit.dimension(), unit);
            }
        }
        return Collections.unmodifiableMap(canonical);
    }

    private static Map<Dimension, Map<String, Unit>> spellings() {
        Map<Dimension, Map<String, Unit>> spellings = new EnumMap<>(Dimension.class);
        for (Unit unit : Unit.values()) {
            Map<String, Unit> ofDimension = spellings.computeIfAbsent(unit.dimension(), dimension -> new HashMap<>());
            ofDimension.put(unit.symbol(), unit);
            for (String other : unit.otherSpellings().split(" ", -1)) {
                if (!other.isEmpty()) {
                    ofDimension.put(other, unit);
                }
            }
        }
        return Collections.unmodifiableMap(spellings);
    }
}
