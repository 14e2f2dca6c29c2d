package org.ohmloom.model;

import static org.ohmloom.units.Require.positive;

/**
 * The current of a load when it is switched on: a peak that decays exponentially to its running current.
 *
 * @param peakAmps     current at the first moment at the rated voltage, A, more than 0
 * @param decaySeconds time constant of the decay, s, more than 0
 */
public record Inrush(double peakAmps, double decaySeconds) {

    public Inrush {
        positive(peakAmps, "inrush current");
        positive(decaySeconds, "decay time of an inrush");
    }
}
