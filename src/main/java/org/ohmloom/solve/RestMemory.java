package org.ohmloom.solve;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import org.ohmloom.graph.BranchId;

/**
 * Where relays and fed outputs came to rest and inductive loads settled, to begin a much like solution with: every moment
 * begins at its old voltages. The solution is held to the same accuracy with it as without. Belongs to one network at a time
 * and to one thread.
 *
 * <p>What searches of an earlier analysis ended with tells only where to look first ({@link #near}): a search takes the same steps
 * with it as without, each from voltages near its own.
 */
final class RestMemory {

    /** Trials of an earlier analysis, by the relays pulled in and outputs on. */
    private final Map<SortedSet<BranchId>, Trial> earlier;

    private final Map<SortedSet<BranchId>, Trial> tried = new HashMap<>();
    private Optional<Switching> switching = Optional.empty();
    private Optional<Trial> trial = Optional.empty();

    RestMemory() {
        this(Map.of());
    }

    private RestMemory(Map<SortedSet<BranchId>, Trial> earlier) {
        this.earlier = earlier;
    }

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

    /** A trial of an earlier analysis with the same relays pulled in. */
    Optional<Trial> near(Switching held) {
        return Optional.ofNullable(earlier.get(held.active()));
    }

    /** Takes a trial down for analyses to come. */
    void tried(Switching held, Trial trial) {
        tried.put(held.active(), trial);
    }

    /** This as the memory of an earlier analysis; levels of inductive loads are not handed on, since which ones move is to be found anew. */
    RestMemory forSearches() {
        Map<SortedSet<BranchId>, Trial> near = new HashMap<>(earlier);
        near.putAll(tried);
        near.values().forEach(Trial::keepVolts);
        return new RestMemory(near);
    }
}
