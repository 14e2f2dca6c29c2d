package org.ohmloom.signal.study;

import java.util.Optional;
import java.util.function.Supplier;

/** The study of channels and data buses, worked out when it is first asked for and then kept. Safe to share between threads. */
public final class SignalResults {
    private final Supplier<SignalStudy> working;
    private Optional<SignalStudy> study = Optional.empty();

    /**
     * Nothing worked out yet.
     *
     * @param working works it out
     */
    public SignalResults(Supplier<SignalStudy> working) {
        this.working = working;
    }

    /** Channels and data buses. */
    public synchronized SignalStudy study() {
        SignalStudy known = study.orElseGet(working);
        study = Optional.of(known);
        return known;
    }
}
