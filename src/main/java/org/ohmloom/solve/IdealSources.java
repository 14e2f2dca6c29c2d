package org.ohmloom.solve;

import java.util.Optional;
import org.ohmloom.graph.BranchId;

/**
 * Finds sources without internal resistance that contradict each other or leave open which of them gives the current.
 *
 * <p>Where such sources that all regulate make a closed loop, the current around it has no unique value: it is any current
 * when their voltages cancel, infinite when they do not. A source at its limit no longer holds its voltage and closes no
 * loop; {@link Regulation#held} has made it a current.
 *
 * <p>Where such a source is shorted by next to nothing its current is so large that the resistance that stands in for none shows.
 */
final class IdealSources {

    /** Largest part of its voltage that a source may lose over {@link LimitedSource#IDEAL_OHMS}. */
    private static final double MOST_LOST_RATIO = 1e-9;

    private IdealSources() {}

    /** The first of the sources that hold their voltage whose current is beyond all bounds, in branch order. */
    static Optional<Failure> shorted(Circuit circuit, Characteristic[] laws, PreciseRow amps) {
        for (int branch = 0; branch < laws.length; branch++) {
            if (laws[branch] instanceof LimitedSource source
                    && source.leastOhms() <= LimitedSource.IDEAL_OHMS
                    && Math.abs(amps.value(branch)) * LimitedSource.IDEAL_OHMS
                            > MOST_LOST_RATIO * Math.max(1, source.emfVolts())) {
                return Optional.of(Failure.shorted(circuit.branches().get(branch)));
            }
        }
        return Optional.empty();
    }

    /** The first loop among the sources that hold their voltage, in branch order. */
    static Optional<Failure> loop(Circuit circuit, Characteristic[] laws) {
        Joining joining = new Joining(circuit.points().size() + 1);
        Optional<BranchId> other = Optional.empty();
        for (int branch = 0; branch < laws.length; branch++) {
            if (laws[branch] instanceof LimitedSource source
                    && source.ohms() <= LimitedSource.IDEAL_OHMS
                    && !source.canGoFlat()) {
                BranchId id = circuit.branches().get(branch).id();
                if (!joining.join(
                        circuit.mesh().from()[branch] + 1, circuit.mesh().to()[branch] + 1)) {
                    return Optional.of(Failure.idealLoop(circuit.branches().get(branch), other.orElse(id)));
                }
                other = Optional.of(id);
            }
        }
        return Optional.empty();
    }
}
