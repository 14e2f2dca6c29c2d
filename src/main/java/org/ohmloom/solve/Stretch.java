package org.ohmloom.solve;

import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.graph.BranchId;

/**
 * A part of the period of a clock in which none of its outputs switches.
 *
 * @param startFraction where it starts, as a share of the period, 0 to 1; the last one may run on into the next period
 * @param shareFraction how much of the period it takes, more than 0
 * @param on            the outputs and cycling loads of the clock that are on in it
 */
public record Stretch(double startFraction, double shareFraction, SortedSet<BranchId> on) {

    public Stretch {
        on = Collections.unmodifiableSortedSet(new TreeSet<>(on));
    }
}
