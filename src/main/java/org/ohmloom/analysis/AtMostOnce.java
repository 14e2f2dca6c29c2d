package org.ohmloom.analysis;

import java.util.Optional;
import java.util.function.Supplier;

/** A value that is worked out when it is first asked for, and kept; for one thread. */
final class AtMostOnce<T> {

    private final Supplier<T> source;
    private Optional<T> known = Optional.empty();

    AtMostOnce(Supplier<T> source) {
        this.source = source;
    }

    T get() {
        if (known.isEmpty()) {
            known = Optional.of(source.get());
        }
        return known.get();
    }
}
