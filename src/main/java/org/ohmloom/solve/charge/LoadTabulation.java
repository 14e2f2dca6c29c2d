package org.ohmloom.solve.charge;

import java.util.List;
import org.ohmloom.model.StateId;

/**
 * The load analysis of one operating state against its alternators.
 *
 * @param state           the state
 * @param lines           its loads that draw, most current first
 * @param continuousAmps  sum of the continuous loads, A
 * @param fiveSecondAmps  sum of the largest means over 5 s, A
 * @param fiveMinuteAmps  sum of the largest means over 5 min, A
 * @param halfHourAmps    sum of the largest means over 30 min, A
 * @param columnAAmps     column A of the two-column tabulation: loads that always run, A
 * @param columnBAmps     column B: intermittent loads while on, A
 * @param twoColumnAmps   A + the greater of 10 % of B and the largest of B, A
 * @param limitAmps       most current the alternators give in this state, A; 0 without one that turns
 */
public record LoadTabulation(
        StateId state,
        List<LoadLine> lines,
        double continuousAmps,
        double fiveSecondAmps,
        double fiveMinuteAmps,
        double halfHourAmps,
        double columnAAmps,
        double columnBAmps,
        double twoColumnAmps,
        double limitAmps) {

    /** Largest share of an alternator's output that continuous loads may take: FAA AC 43.13-1B, 11-35a. */
    public static final double LARGEST_SHARE = 0.8;

    /** Where the rule is from. */
    public static final String LARGEST_SHARE_SOURCE = "FAA AC 43.13-1B CHG 1 (2001), 11-35a";

    public LoadTabulation {
        lines = List.copyOf(lines);
    }

    /** The continuous current that leaves the alternators their reserve, A. */
    public double allowedAmps() {
        return allowedAmps(limitAmps);
    }

    /** The continuous current an alternator of that output, A, may have to feed. */
    public static double allowedAmps(double limitAmps) {
        return LARGEST_SHARE * limitAmps;
    }

    /** Share of the alternators' output that the continuous loads take; 0 without an alternator that turns. */
    public double shareFraction() {
        return limitAmps > 0 ? continuousAmps / limitAmps : 0;
    }
}
