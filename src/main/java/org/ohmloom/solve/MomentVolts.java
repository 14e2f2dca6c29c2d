package org.ohmloom.solve;

import java.util.Collections;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.ohmloom.graph.PointId;

/**
 * Voltages of the points that others are measured against, in every moment that stood for all of time. Where an inductive load
 * ramps, a moment has the mean of the ramp over its part of the period.
 */
public final class MomentVolts {

    /** Of a network in which nothing switches. */
    public static final MomentVolts NONE = new MomentVolts(Map.of());

    /** Smaller departures are told as none, V. */
    public static final double LEAST_VOLTS = 2e-6;

    private final Map<PointId, float[]> volts;

    MomentVolts(Map<PointId, float[]> volts) {
        this.volts = Collections.unmodifiableMap(new TreeMap<>(volts));
    }

    /** The points that are known. */
    public Set<PointId> points() {
        return volts.keySet();
    }

    /**
     * The largest |V(at) - V(reference) - meanVolts| of all moments, V, right to about 1 uV; 0 below {@link #LEAST_VOLTS}.
     *
     * @param at        one point
     * @param reference the other point
     * @param meanVolts mean of the difference, V
     * @return empty when nothing switches there or the points are not watched
     */
    public OptionalDouble departure(PointId at, PointId reference, double meanVolts) {
        float[] one = volts.get(at);
        float[] other = volts.get(reference);
        if (one == null || other == null || one.length != other.length) {
            return OptionalDouble.empty();
        }
        double most = 0;
        for (int moment = 0; moment < one.length; moment++) {
            most = Math.max(most, Math.abs((double) one[moment] - other[moment] - meanVolts));
        }
        return OptionalDouble.of(most < LEAST_VOLTS ? 0 : most);
    }
}
