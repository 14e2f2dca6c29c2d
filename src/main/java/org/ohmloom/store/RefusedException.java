package org.ohmloom.store;

import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

/** Thrown inside this package when a value of a file cannot be taken; leaves it as a {@link HarnessFileException}. */
final class RefusedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Spot spot;

    private final transient Text problem;

    RefusedException(Spot spot, Text problem) {
        super(problem.english(), null, false, false);
        this.spot = spot;
        this.problem = problem;
    }

    /** A value refused in a sentence, as {@link Refusals#text} takes it. */
    RefusedException(Spot spot, String template, Object... values) {
        this(spot, Refusals.text(template, values));
    }

    Spot spot() {
        return spot;
    }

    Text problem() {
        return problem;
    }
}
