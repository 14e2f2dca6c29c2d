package org.ohmloom.graph;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A way along conductors, contacts and devices from a source.
 *
 * @param branches     its branches in order from the source's positive terminal
 * @param lengthMetres length of its wires, m; empty when the length of one of them is not known
 */
public record FeedWay(List<BranchId> branches, OptionalDouble lengthMetres) {

    public FeedWay {
        branches = List.copyOf(branches);
    }
}
