package org.ohmloom.remedy;

import java.util.List;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * What a remedy does to the number its finding is about.
 *
 * @param what   what the number is, as {@code error of P1}
 * @param before the number now
 * @param after  the number with the remedy
 * @param unit   its unit, as {@code V} or {@code bar}; blank for a count
 */
public record Effect(Text what, double before, double after, String unit) {

    /** What becomes of it, as {@code offset of U1: 62 mV → 8 mV}. */
    public Text words() {
        return Text.joined(": ", List.of(what, Text.of(text(before) + " → " + text(after))));
    }

    private String text(double value) {
        return switch (unit) {
            case "V" -> Formats.volts(value);
            case "A" -> Formats.amps(value);
            case "" -> Formats.number(value);
            default -> Formats.number(value) + " " + unit;
        };
    }
}
