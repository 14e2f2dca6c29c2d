package org.ohmloom.draw.chart;

import org.ohmloom.words.Text;

/**
 * A current marked in a time-current chart by an upright line.
 *
 * @param label what it is, with its number
 * @param amps  how much, A, above 0
 * @param kind  how its line is drawn
 */
public record CurrentLimit(Text label, double amps, Kind kind) {

    /** What kind of current it is. */
    public enum Kind {
        /** A current the device or the conductor may carry for ever. */
        CONTINUOUS,
        /** A current that flows in normal use. */
        USE,
        /** A fault current. */
        FAULT
    }
}
