package org.ohmloom.size.protection;

import java.util.OptionalDouble;

/**
 * The fault currents a wire may see.
 *
 * @param minimumAmps smallest current through it in a fault beyond it, A; empty when no fault beyond it was solved
 * @param maximumAmps largest current through it in a fault just beyond its start, A; empty likewise
 */
public record WireFaults(OptionalDouble minimumAmps, OptionalDouble maximumAmps) {

    /** Nothing solved. */
    public static final WireFaults NONE = new WireFaults(OptionalDouble.empty(), OptionalDouble.empty());

    WireFaults withMinimum(double amps) {
        return amps > 0
                ? new WireFaults(OptionalDouble.of(Math.min(amps, minimumAmps.orElse(amps))), maximumAmps)
                : this;
    }

    WireFaults withMaximum(double amps) {
        return amps > 0 ? new WireFaults(minimumAmps, OptionalDouble.of(Math.max(amps, maximumAmps.orElse(0)))) : this;
    }
}
