package org.ohmloom.solve;

import java.util.Optional;

/** Voltages and currents of one island in one moment, or why there are none. */
final class IslandMoment {

    private final Optional<Failure> failure;
    private final PreciseRow volts;
    private final PreciseRow amps;

    private IslandMoment(Optional<Failure> failure, PreciseRow volts, PreciseRow amps) {
        this.failure = failure;
        this.volts = volts;
        this.amps = amps;
    }

    /** A moment with the voltage of each point, V, and the current of each branch, A. */
    static IslandMoment solved(PreciseRow volts, PreciseRow amps) {
        return new IslandMoment(Optional.empty(), volts, amps);
    }

    /** A moment without a solution. */
    static IslandMoment failed(Failure failure) {
        return new IslandMoment(Optional.of(failure), new PreciseRow(0), new PreciseRow(0));
    }

    /** Why there is no solution; empty when there is one. */
    Optional<Failure> failure() {
        return failure;
    }

    /** Voltage of each point of the circuit, V. */
    PreciseRow volts() {
        return volts;
    }

    /** Current of each branch of the circuit, A. */
    PreciseRow amps() {
        return amps;
    }
}
