package org.ohmloom.ground.sensor;

import org.ohmloom.units.Formats;

/** Numbers in formulas. */
final class Figures {

    private Figures() {}

    /** A value with the unit of a measurement. */
    static String of(double value, String unit) {
        return Formats.number(value) + (unit.isEmpty() ? "" : " " + unit);
    }

    /** "a to b" in the unit of a measurement. */
    static String change(double before, double after, String unit) {
        return of(before, unit) + " reads as " + of(after, unit);
    }
}
