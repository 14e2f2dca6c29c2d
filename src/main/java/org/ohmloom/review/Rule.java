package org.ohmloom.review;

import java.util.Set;
import java.util.function.Consumer;

/** One rule of good practice: stateless, looks at the evidence, reports what it finds. */
public interface Rule {

    /** What it is about. */
    RuleInfo info();

    /** The studies it looks at; it is not asked before they are there. */
    default Set<StudyPart> needs() {
        return Set.of();
    }

    /** Reports every breach in the evidence, in the order of the elements' ids. */
    void review(Evidence evidence, Consumer<Finding> report);
}
