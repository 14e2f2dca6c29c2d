package org.ohmloom.review;

import java.util.function.Consumer;

/** One rule of good practice: stateless, looks at the evidence, reports what it finds. */
public interface Rule {

    /** What it is about. */
    RuleInfo info();

    /** Reports every breach in the evidence, in the order of the elements' ids. */
    void review(Evidence evidence, Consumer<Finding> report);
}
