package org.ohmloom.solve;

import java.util.Optional;

/**
 * Where relays and fed outputs came to rest and inductive loads settled, to begin a much like solution with: every moment
 * begins at its old voltages. The solution is held to the same accuracy with it as without. Belongs to one network at a time
 * and to one thread.
 */
final class RestMemory {

    private Optional<Switching> switching = Optional.empty();
    private Optional<Trial> trial = Optional.empty();

    /** Where relays and fed outputs came to rest, if they are the same ones. */
    Optional<Switching> switching(Switching atRest) {
        return switching.filter(each -> each.watched().equals(atRest.watched()));
    }

    /** The trial that was solved last. */
    Optional<Trial> trial() {
        return trial;
    }

    /** Keeps what a search has settled on. */
    void keep(Switching found, Trial solved) {
        switching = Optional.of(found);
        trial = Optional.of(solved);
    }
}
