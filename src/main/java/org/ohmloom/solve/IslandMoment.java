package org.ohmloom.solve;

import java.util.Optional;

/** Voltages and currents of one island in one moment, or why there are none. */
final class IslandMoment {

    private final Optional<Failure> failure;
    private final PreciseRow volts;
    private final PreciseRow amps;
    private final Characteristic[] awake;

    private IslandMoment(Optional<Failure> failure, PreciseRow volts, PreciseRow amps, Characteristic[] awake) {
        this.failure = failure;
        this.volts = volts;
        this.amps = amps;
        this.awake = awake;
    }

    /** A moment with the voltage of each point, V, the current of each branch, A, and what each branch was, asleep or awake. */
    static IslandMoment solved(PreciseRow volts, PreciseRow amps, Characteristic[] awake) {
        return new IslandMoment(Optional.empty(), volts, amps, awake);
    }

    /** A moment without a solution. */
    static IslandMoment failed(Failure failure) {
        return new IslandMoment(Optional.of(failure), new PreciseRow(0), new PreciseRow(0), new Characteristic[0]);
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

    /** What each branch of the circuit was, loads that hold their power asleep or awake. */
    Characteristic[] awake() {
        return awake;
    }
}
