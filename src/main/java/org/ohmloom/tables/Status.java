package org.ohmloom.tables;

import java.util.Optional;

/** How well a value of a table is founded; declared from the strongest to the weakest. */
public enum Status {
    /** Read in the document that is cited. */
    PUBLISHED("published"),
    /** Measured on the built harness: a reading of the as-built record, never a row of a table. */
    MEASURED("measured"),
    /** Follows from a formula that the table names. */
    COMPUTED("computed"),
    /** Recalled from the document that is cited, not read there again. */
    FROM_MEMORY("from memory"),
    /** What the trade does; no document is cited for it. */
    COMMON_PRACTICE("common practice, no source");

    /** What a table file may write, for messages. */
    static final String CHOICES = "published, from memory, computed (FORMULA) or common practice, no source";

    private final String words;

    Status(String words) {
        this.words = words;
    }

    /** The status in the words shown to people. */
    public String words() {
        return words;
    }

    /** The weaker of this and the other: what may be said of a value that rests on both. */
    public Status weaker(Status other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** Reads a status as table files write it; computed must name its formula in brackets. Empty when it is none. */
    static Optional<Status> parse(String text) {
        if (text.startsWith("computed (") && text.endsWith(")") && text.length() > "computed ()".length()) {
            return Optional.of(COMPUTED);
        }
        for (Status status : values()) {
            if (status != COMPUTED && status != MEASURED && status.words.equals(text)) {
                return Optional.of(status);
            }
        }
        return Optional.empty();
    }
}
