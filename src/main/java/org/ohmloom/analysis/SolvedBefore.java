package org.ohmloom.analysis;

import java.lang.ref.SoftReference;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.SourceMemory;

/**
 * Where the search for each operating state ended when it was last solved, for the next time it is solved from the beginning with
 * other values: it then takes the same steps, each from voltages near those it will find. What is wrong here costs time, nothing
 * else. Safe on any thread: a memory that was taken is nobody else's until it is put back. Given up where there is no room for it.
 */
public final class SolvedBefore {

    private final Map<StateId, SoftReference<SourceMemory>> memories = new ConcurrentHashMap<>();

    /** Nothing solved yet. */
    public SolvedBefore() {}

    /** What is remembered of a state, not to be given to anybody else; a new memory where that is nothing. */
    SourceMemory take(StateId state) {
        return Optional.ofNullable(memories.remove(state))
                .map(SoftReference::get)
                .orElseGet(SourceMemory::new);
    }

    /** Puts a memory back that no search uses any more. */
    void put(StateId state, SourceMemory memory) {
        memories.put(state, new SoftReference<>(memory.begunAnew()));
    }

    /** Whether there is something to begin near. */
    boolean isOf(Iterable<StateId> states) {
        for (StateId state : states) {
            if (!memories.containsKey(state)) {
                return false;
            }
        }
        return true;
    }

    /** Takes over all that another remembers. */
    void takeOver(SolvedBefore other) {
        memories.putAll(other.memories);
        other.memories.clear();
    }
}
