package org.ohmloom.store;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.ohmloom.units.Texts;

/**
 * A place in a harness file while it is read or written, told in three ways: as a JSON path, as a JSON path with the names
 * of the elements passed, and with names instead of positions.
 */
final class Spot {
    private static final Pattern PLAIN_KEY = Pattern.compile("[A-Za-z_][A-Za-z0-9_]*");

    private final @Nullable Spot parent;
    private final String step;
    private final String label;
    private final String name;
    private final KeptKeys kept;

    private Spot(@Nullable Spot parent, String step, String label, String name, KeptKeys kept) {
        this.parent = parent;
        this.step = step;
        this.label = label;
        this.name = name;
        this.kept = kept;
    }

    /** The whole file. */
    static Spot root(KeptKeys kept) {
        return new Spot(null, "$", "", "", kept);
    }

    /** The value of a key of the object here. */
    Spot key(String key) {
        String next = PLAIN_KEY.matcher(key).matches() ? "." + key : "['" + key + "']";
        return new Spot(this, next, "", escaped(key), kept);
    }

    /** The element of that number, counted from 0, of the array here; the name is empty when it has none. */
    Spot item(int index, String itemName) {
        return itemName.isEmpty()
                ? new Spot(this, "[" + index + "]", "", String.valueOf(index), kept)
                : new Spot(this, "[" + index + "]", " (" + shown(itemName) + ")", escaped(itemName), kept);
    }

    /** A name short enough for a message. */
    private static String shown(String name) {
        String quoted = Texts.quoted(name);
        return quoted.substring(1, quoted.length() - 1);
    }

    /** The unknown keys of the file. */
    KeptKeys kept() {
        return kept;
    }

    /** As a JSON path: {@code $.wires[3].from}. */
    String path() {
        return parent == null ? step : parent.path() + step;
    }

    /** As a JSON path with names: {@code $.wires[3] (W4).from}. */
    String described() {
        return parent == null ? step : parent.described() + step + label;
    }

    /** With names instead of positions: {@code wires/W4/from}; empty for the whole file. */
    String place() {
        if (parent == null) {
            return "";
        }
        String before = parent.place();
        return before.isEmpty() ? name : before + "/" + name;
    }

    private static String escaped(String text) {
        return text.replace("~", "~0").replace("/", "~1");
    }
}
