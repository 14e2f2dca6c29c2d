package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.ohmloom.graph.Law;

/**
 * A stretch of the common period in which nothing switches.
 *
 * <p>All outputs that switch at a duty are taken to rise together: the worst overlap. With the distinct duties d1 &lt; d2 &lt; ...
 * the period falls into [0, d1], [d1, d2], ..., [dn, 1]; in the first everything is on, in the last nothing.
 *
 * @param startFraction start, as a share of the period
 * @param endFraction   end, as a share of the period
 */
record Period(double startFraction, double endFraction) {

    /** The stretches of a period, in order. */
    static List<Period> of(Iterable<Law> laws) {
        TreeSet<Double> ends = new TreeSet<>(List.of(1.0));
        for (Law law : laws) {
            if (law instanceof Law.SwitchedResistance switched) {
                ends.add(switched.dutyFraction());
            }
        }
        List<Period> periods = new ArrayList<>();
        double start = 0;
        for (double end : ends) {
            periods.add(new Period(start, end));
            start = end;
        }
        return periods;
    }

    /** Its share of the period. */
    double shareFraction() {
        return endFraction - startFraction;
    }

    /** Whether an output of that duty is on in it. */
    boolean hasOn(double dutyFraction) {
        return dutyFraction >= endFraction;
    }
}
