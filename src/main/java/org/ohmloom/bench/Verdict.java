package org.ohmloom.bench;

/** What a measured value says of the harness it was measured on. */
public enum Verdict {
    /** Within its limit. */
    PASSED("passed"),
    /** Beyond its limit. */
    FAILED("failed"),
    /** There is nothing to hold it against, or it proves nothing. */
    NOT_JUDGED("not judged");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /** What people say. */
    public String words() {
        return words;
    }
}
