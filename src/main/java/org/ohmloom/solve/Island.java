package org.ohmloom.solve;

import java.util.Optional;
import org.ohmloom.graph.BranchId;
import org.ohmloom.words.Text;

/**
 * Part of the network that shares no conductor with the rest, with how far its solution got.
 *
 * @param id      identity: the first of its points
 * @param status  how far the solution got
 * @param told    the same for people, without a full stop
 * @param cause   the branch to blame when it is overloaded or did not settle
 * @param powered whether a source in it is on
 */
public record Island(String id, IslandStatus status, Text told, Optional<BranchId> cause, boolean powered) {

    /** How far the solution got, in English, as a sentence. */
    public String sentence() {
        return told.english() + ".";
    }
}
