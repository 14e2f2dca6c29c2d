package org.ohmloom.bundle.section;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.CoveringSize;
import org.ohmloom.words.Text;

/**
 * How a covering in one size suits a bundle.
 *
 * @param size         the covering
 * @param problems     what is wrong with it; empty when it suits
 * @param fillFraction area of the wires over the inside area of conduit or tube; 0 for others
 * @param limitFraction most of that
 * @param limitSource  the row of that limit; the row of the size for others
 * @param finishedMm   diameter over the covering, mm
 * @param materialMetres length of covering a metre of bundle takes: more than 1 for wound tape and for what shrinks
 * @param told         how it suits, in words
 */
public record CoveringFit(
        CoveringSize size,
        Set<Problem> problems,
        double fillFraction,
        double limitFraction,
        Citation limitSource,
        double finishedMm,
        double materialMetres,
        Text told) {

    /** How it suits, in English words. */
    public String words() {
        return told.english();
    }

    /** What can be wrong. */
    public enum Problem {
        BUNDLE_TOO_THICK,
        BUNDLE_TOO_THIN,
        OVER_FILLED,
        TOO_HOT
    }

    public CoveringFit {
        problems = problems.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(problems));
    }

    /** Whether nothing is wrong. */
    public boolean suits() {
        return problems.isEmpty();
    }
}
