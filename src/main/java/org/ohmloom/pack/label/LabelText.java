package org.ohmloom.pack.label;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a label says, and where it goes.
 *
 * @param kind       what it is on
 * @param subject    id of the element it names; the number of the harness for its own label
 * @param lines      its text, line by line
 * @param diameterMm what it goes round, mm; empty when that is not known
 * @param count      how many of it, 1 or more
 * @param where      where they go, for people
 */
public record LabelText(
        Kind kind, String subject, List<String> lines, OptionalDouble diameterMm, int count, String where) {

    /** What a label is on. */
    public enum Kind {
        WIRE("Wires"),
        CONNECTOR("Connectors"),
        BRANCH("Branches"),
        HARNESS("The harness");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** What people call them. */
        public String words() {
            return words;
        }
    }

    public LabelText {
        lines = List.copyOf(lines);
    }

    /** The text on one line, as a label printer takes it. */
    public String text() {
        return String.join(" ", lines);
    }
}
