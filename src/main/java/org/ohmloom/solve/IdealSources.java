package org.ohmloom.solve;

import java.util.Optional;
import org.ohmloom.graph.BranchId;

/**
 * Finds sources without internal resistance that contradict each other or leave open which of them gives the current.
 *
 * <p>Where such sources that all regulate make a closed loop, the current around it has no unique value: it is any current
 * when their voltages cancel, infinite when they do not. A source at its limit no longer holds its voltage and closes no
 * loop; {@link Regulation#held} has made it a current.
 */
final class IdealSources {

    private IdealSources() {}

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
