package org.ohmloom.workbench.words;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;

/** A moment as a person reads it where the computer stands. */
public final class Moment {

    private Moment() {}

    /** Day and time by the clock on the wall. */
    public static String text(Instant at) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM).format(at.atZone(ZoneId.systemDefault()));
    }
}
