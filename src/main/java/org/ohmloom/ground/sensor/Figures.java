package org.ohmloom.ground.sensor;

import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** Numbers in formulas. */
final class Figures {

    private Figures() {}

    /** A value with the unit of a measurement. */
    static String of(double value, String unit) {
        return Formats.number(value) + (unit.isEmpty() ? "" : " " + unit);
    }

    /** "a to b" in the unit of a measurement. */
    static Text change(double before, double after, String unit) {
        return ReadingTexts.text("formula.reads-as", of(before, unit), of(after, unit));
    }
}
