package org.ohmloom.remedy;

/** The usual remedies of returns. */
public enum RemedyKind {
    OWN_RETURN("return of its own"),
    MOVED_GROUND("ground moved"),
    SINGLE_POINT("ground at one point"),
    LARGER_RETURN("larger return"),
    SECOND_RETURN("second return beside it"),
    LIFTED_SHIELD("one shield end lifted"),
    OPENED_LOOP("loop opened"),
    TWISTED("wires twisted"),
    SHIELDED("wires shielded"),
    NEW_GROUND_POINT("ground point added"),
    CLEANED_JOINT("joint cleaned"),
    COMBINED("several together");

    private final String words;

    RemedyKind(String words) {
        this.words = words;
    }

    /** The kind in words. */
    public String words() {
        return words;
    }
}
