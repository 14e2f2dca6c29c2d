package org.ohmloom.graph;

import static org.ohmloom.units.Require.positive;

/**
 * A regulated source that holds its set point at another place than its own terminals: its regulator moves the
 * electromotive force until the mean voltage there is right.
 *
 * @param source        branch of the source, whose law is a {@link Law.VoltageSource}
 * @param sense         point whose mean voltage against the source's negative terminal is held
 * @param setPointVolts the voltage held there, V, more than 0
 */
public record Sensing(BranchId source, PointId sense, double setPointVolts) {
    public Sensing {
        positive(setPointVolts, "set point at a sense point");
    }
}
