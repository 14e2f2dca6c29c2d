package org.ohmloom.workbench.desk;

import java.util.List;
import java.util.Set;
import org.ohmloom.review.StudyPart;

/**
 * How the results on screen stand to the harness on screen.
 *
 * @param kind     the status
 * @param sentence the same for people
 */
public record CalculationStatus(Kind kind, String sentence) {

    private static final int MOST_NAMED = 3;

    /** The kinds of status. */
    public enum Kind {
        /** There is no harness. */
        NONE,
        /** A calculation is under way; older numbers stay visible. */
        CALCULATING,
        /** Currents are those of the harness, some studies are still under way; their older numbers stay visible. */
        STUDYING,
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

    /** Some studies are under way. */
    static CalculationStatus studying(Set<StudyPart> pending) {
        return new CalculationStatus(Kind.STUDYING, "Working out " + words(pending));
    }

    /** Stopped while some studies were under way. */
    static CalculationStatus stopped(Set<StudyPart> pending) {
        return new CalculationStatus(Kind.OUTDATED, "Stopped: " + words(pending) + " outdated");
    }

    /** What is pending in a few words: the first two by name, the others counted. */
    private static String words(Set<StudyPart> pending) {
        List<String> names = pending.stream().sorted().map(StudyPart::words).toList();
        return names.size() <= MOST_NAMED
                ? String.join(", ", names)
                : String.join(", ", names.subList(0, MOST_NAMED - 1)) + " and " + (names.size() - MOST_NAMED + 1)
                        + " more";
    }

    /** Whether something is under way. */
    public boolean isBusy() {
        return kind == Kind.CALCULATING || kind == Kind.STUDYING;
    }

    /** Not possible, with the reason. */
    static CalculationStatus notPossible(String reason) {
        return new CalculationStatus(Kind.NOT_POSSIBLE, "Not possible: " + reason);
    }
}
