package org.ohmloom.analysis.tolerance;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.tables.SpreadFigure;
import org.ohmloom.tables.WireTables;

/**
 * Spreads that somebody stated, by kind or for one element; what a table states comes after what a person says. Conductors
 * and lengths without one have that of their own table rows. Immutable.
 *
 * @param said spreads by {@link #key}
 */
public record Spreads(SortedMap<String, Spread> said) {

    private static final String SAID = "as entered for this study";

    public Spreads {
        said = Collections.unmodifiableSortedMap(new TreeMap<>(said));
    }

    /** Those of the tables, a builder's own among them. */
    public static Spreads of(WireTables tables) {
        SortedMap<String, Spread> said = new TreeMap<>();
        for (SpreadFigure figure : tables.spreads()) {
            String key = figure.item();
            SpreadKind kind = SpreadKind.of(key.contains(":") ? key.substring(0, key.indexOf(':')) : key)
                    .orElseThrow();
            said.put(
                    key,
                    new Spread(
                            kind,
                            SpreadShape.of(figure.shape()).orElseThrow(),
                            figure.low().value(),
                            figure.high().value(),
                            figure.low().citation().text()));
        }
        return new Spreads(said);
    }

    /** How options and tables name the spread of a kind, or of one element of it: "load" or "load:FAN1". */
    static String key(SpreadKind kind, String element) {
        return element.isEmpty() ? kind.key() : kind.key() + ":" + element;
    }

    /**
     * With one more, said as in "load=-5..10", "load:FAN1=0..20,peaked", "ambient=none".
     *
     * @throws IllegalArgumentException with what is wrong and what would be right
     */
    public Spreads with(String text) {
        return with(SpreadText.key(text), SpreadText.of(text, SAID));
    }

    /** With one for a whole kind; those of single elements stay. */
    public Spreads with(Spread spread) {
        return with(spread.kind().key(), spread);
    }

    /** With one a person entered for a whole kind, in the unit of the kind. */
    public Spreads with(SpreadKind kind, SpreadShape shape, double lowUnits, double highUnits) {
        return with(new Spread(kind, shape, lowUnits, highUnits, SAID));
    }

    private Spreads with(String key, Spread spread) {
        SortedMap<String, Spread> changed = new TreeMap<>(said);
        changed.put(key, spread);
        return new Spreads(changed);
    }

    /** What is said of one element, otherwise of its kind, if anything. */
    public Optional<Spread> of(SpreadKind kind, String element) {
        return Optional.ofNullable(said.get(key(kind, element))).or(() -> of(kind));
    }

    /** What is said of a whole kind, if anything. */
    public Optional<Spread> of(SpreadKind kind) {
        return Optional.ofNullable(said.get(kind.key()));
    }

    /** Whether something is said of that very element. */
    boolean names(SpreadKind kind, String element) {
        return said.containsKey(key(kind, element));
    }
}
