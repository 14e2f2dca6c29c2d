package org.ohmloom.solve;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.BranchId;

/**
 * The current of one inductive load or magnet motor through the period of the clock that switches it.
 *
 * @param load            its branch
 * @param clock           the clock that switches it; empty when nothing does and only others disturb it
 * @param meanAmps        mean current, A
 * @param valleyAmps      least current, A; 0 when it dies on the way
 * @param peakAmps        largest current, A
 * @param emfVolts        counter-voltage, V; 0 but for a motor
 * @param speedFraction   speed over rated speed of a motor
 * @param hasFreewheel    whether its current finds a way when it is switched off; otherwise it is taken to break off
 * @param brokenJoules    energy of the coil that goes into whatever breaks through, for each period, J; 0 with a way
 */
public record Ripple(
        BranchId load,
        Optional<String> clock,
        double meanAmps,
        double valleyAmps,
        double peakAmps,
        double emfVolts,
        OptionalDouble speedFraction,
        boolean hasFreewheel,
        double brokenJoules) {

    /** Peak to valley, A. */
    public double rippleAmps() {
        return peakAmps - valleyAmps;
    }

    /** Whether the current never dies. */
    public boolean isContinuous() {
        return valleyAmps > 0;
    }
}
