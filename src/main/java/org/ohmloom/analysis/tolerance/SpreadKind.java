package org.ohmloom.analysis.tolerance;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.ohmloom.words.Constants;

/** What spreads about the value it is entered with. */
public enum SpreadKind {
    /** Resistance of a metre of conductor; all wires of one type and size alike, as from one reel. */
    CONDUCTOR,
    /** Length of each wire as cut. */
    LENGTH,
    /** Resistance of each contact, joint and strap. */
    JOINT,
    /** Current of each load at the same voltage. */
    LOAD,
    /** Voltage of each source without load, or its set point. */
    SOURCE,
    /** Air everywhere, warmer or cooler by as much. */
    AMBIENT;

    /** What it is, in words. */
    public String words() {
        return Constants.text(this).english();
    }

    /** How options and tables write it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** K for air; otherwise % of the entered value. */
    public String unit() {
        return this == AMBIENT ? "K" : "%";
    }

    /** How many of its values make one unit. */
    double perUnit() {
        return this == AMBIENT ? 1 : 0.01;
    }

    /** The kind an option or a table means. */
    public static Optional<SpreadKind> of(String key) {
        return Arrays.stream(values()).filter(each -> each.key().equals(key)).findFirst();
    }
}
