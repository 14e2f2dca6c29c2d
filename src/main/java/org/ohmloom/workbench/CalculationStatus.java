package org.ohmloom.workbench;

/**
 * How the results on screen stand to the harness on screen.
 *
 * @param kind     the status
 * @param sentence the same for people
 */
record CalculationStatus(Kind kind, String sentence) {

    /** The kinds of status. */
    enum Kind {
        /** There is no harness. */
        NONE,
        /** A calculation is under way; older numbers stay visible. */
        CALCULATING,
        /** The numbers are those of the harness. */
        UP_TO_DATE,
        /** The calculation was stopped; the numbers are those of an earlier harness. */
        OUTDATED,
        /** The calculation ended with a reason why there are no numbers. */
        NOT_POSSIBLE
    }

    static final CalculationStatus NONE = new CalculationStatus(Kind.NONE, "");
    static final CalculationStatus CALCULATING = new CalculationStatus(Kind.CALCULATING, "Calculating");
    static final CalculationStatus UP_TO_DATE = new CalculationStatus(Kind.UP_TO_DATE, "Up to date");
    static final CalculationStatus OUTDATED = new CalculationStatus(Kind.OUTDATED, "Outdated: calculation stopped");

    /** Not possible, with the reason. */
    static CalculationStatus notPossible(String reason) {
        return new CalculationStatus(Kind.NOT_POSSIBLE, "Not possible: " + reason);
    }
}
