package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.IntFunction;

/**
 * A stretch of a clock, or a piece of one where a current in it is told in two levels.
 *
 * @param stretch       number of the stretch
 * @param placeFraction middle of the piece, as a share of the stretch
 * @param shareFraction how much of the period it takes
 */
record Part(int stretch, double placeFraction, double shareFraction) {

    private static final double LEAST_FRACTION = 1e-11;

    /** The parts of a clock, its stretches cut at the given shares of each. */
    static List<Part> of(Clock clock, IntFunction<? extends Iterable<Double>> cuts) {
        List<Part> parts = new ArrayList<>();
        for (int stretch = 0; stretch < clock.stretches().size(); stretch++) {
            double share = clock.stretches().get(stretch).shareFraction();
            TreeSet<Double> ends = new TreeSet<>();
            cuts.apply(stretch).forEach(ends::add);
            ends.add(1.0);
            double start = 0;
            for (double end : ends) {
                if ((end - start) * share > LEAST_FRACTION) {
                    parts.add(new Part(stretch, (start + end) / 2, (end - start) * share));
                    start = end;
                }
            }
        }
        return parts;
    }
}
