package org.ohmloom.workbench.desk;

import java.util.List;
import java.util.Set;
import org.ohmloom.review.StudyPart;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/**
 * How the results on screen stand to the harness on screen.
 *
 * @param kind     the status
 * @param details  what else there is to say to people; empty where the kind says all
 */
public record CalculationStatus(Kind kind, String details) {
    private static final Words WORDS = Words.of("desk");

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
    static final CalculationStatus CALCULATING = new CalculationStatus(Kind.CALCULATING, "");
    static final CalculationStatus UP_TO_DATE = new CalculationStatus(Kind.UP_TO_DATE, "");
    static final CalculationStatus OUTDATED = new CalculationStatus(Kind.OUTDATED, "");

    /** The same for people. */
    public String sentence() {
        if (!details.isEmpty()) {
            return details;
        }
        return switch (kind) {
            case CALCULATING -> WORDS.get("calculation-status.calculating");
            case UP_TO_DATE -> WORDS.get("calculation-status.up-to-date");
            case OUTDATED -> WORDS.get("calculation-status.outdated-calculation-stopped");
            default -> "";
        };
    }

    /** Some studies are under way. */
    static CalculationStatus studying(Set<StudyPart> pending) {
        return new CalculationStatus(Kind.STUDYING, WORDS.get("calculation-status.working-out", words(pending)));
    }

    /** Stopped while some studies were under way. */
    static CalculationStatus stopped(Set<StudyPart> pending) {
        return new CalculationStatus(Kind.OUTDATED, WORDS.get("calculation-status.stopped-outdated", words(pending)));
    }

    /** What is pending in a few words: the first two by name, the others counted. */
    private static String words(Set<StudyPart> pending) {
        List<String> names = pending.stream().sorted().map(TradeWords::named).toList();
        return names.size() <= MOST_NAMED
                ? String.join(", ", names)
                : WORDS.get(
                        "calculation-status.and-more",
                        String.join(", ", names.subList(0, MOST_NAMED - 1)),
                        (names.size() - MOST_NAMED + 1));
    }

    /** Whether something is under way. */
    public boolean isBusy() {
        return kind == Kind.CALCULATING || kind == Kind.STUDYING;
    }

    /** Not possible, with the reason. */
    static CalculationStatus notPossible(String reason) {
        return new CalculationStatus(Kind.NOT_POSSIBLE, WORDS.get("calculation-status.not-possible", reason));
    }
}
