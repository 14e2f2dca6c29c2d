package org.ohmloom.draw;

/** Which point of a text lies at its position. */
public enum Anchor {
    /** Left end of the base line. */
    START(0),
    /** Middle of the base line. */
    MIDDLE(0.5),
    /** Right end of the base line. */
    END(1);

    private final double fraction;

    Anchor(double fraction) {
        this.fraction = fraction;
    }

    /** Share of a text's width that lies before its position. */
    public double fraction() {
        return fraction;
    }
}
