package org.ohmloom.analysis.tolerance;

import java.util.List;
import org.ohmloom.graph.BranchId;

/**
 * One thing that varies by itself.
 *
 * @param kind     what it is
 * @param name     its name, the same in every run of the same harness
 * @param spread   how far it spreads
 * @param branches the branches it is a factor of; empty for air
 */
public record SpreadInput(SpreadKind kind, String name, Spread spread, List<BranchId> branches) {
    public SpreadInput {
        branches = List.copyOf(branches);
    }

    /** Its identity, which its draws follow from. */
    String key() {
        return Spreads.key(kind, name);
    }
}
