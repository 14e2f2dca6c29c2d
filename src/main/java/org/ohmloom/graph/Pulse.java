package org.ohmloom.graph;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

/**
 * When something that switches at a duty is on: from {@code phaseFraction} of every period on, for {@code dutyFraction} of
 * it. What names the same clock and has the same frequency keeps its phases to each other; different clocks know nothing
 * of each other.
 *
 * @param clock          the clock, such as the control unit whose outputs share one
 * @param frequencyHertz periods in a second, Hz, more than 0; a slow cycle has less than 1
 * @param phaseFraction  start of the on-time as a share of the period, 0 or more, less than 1
 * @param dutyFraction   share of the period it is on, more than 0, less than 1
 */
public record Pulse(String clock, double frequencyHertz, double phaseFraction, double dutyFraction) {

    public Pulse {
        notBlank(clock, "clock");
        positive(frequencyHertz, "frequency");
        that(phaseFraction >= 0 && phaseFraction < 1, "phase must lie in 0 to 1, was %s", phaseFraction);
        that(dutyFraction > 0 && dutyFraction < 1, "duty must lie between 0 and 1, was %s", dutyFraction);
    }

    /** Length of the period, s. */
    public double periodSeconds() {
        return 1 / frequencyHertz;
    }

    /** Whether it is on at a share of the period, 0 to 1. */
    public boolean isOnAt(double fraction) {
        double since = fraction - phaseFraction;
        return since - Math.floor(since) < dutyFraction;
    }
}
