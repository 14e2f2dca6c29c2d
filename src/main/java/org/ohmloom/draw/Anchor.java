package org.ohmloom.draw;

/** Which point of a text lies at its position. */
public enum Anchor {
    /** Left end of the base line. */
    START,
    /** Middle of the base line. */
    MIDDLE,
    /** Right end of the base line. */
    END;

    /** Share of a text's width that lies before its position. */
    public double fraction() {
        return ordinal() / 2.0;
    }
}
