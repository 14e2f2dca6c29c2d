package org.ohmloom.size;

import java.util.Set;
import org.ohmloom.model.WireId;

/**
 * What a joint choice may do.
 *
 * @param open           wires whose size is open; of them only those are touched that may be changed at all
 * @param neverThinner   whether a wire with a size keeps it or gets a larger one
 * @param beyondContacts wires that may get a size their contacts do not take
 */
public record JointScope(Set<WireId> open, boolean neverThinner, Set<WireId> beyondContacts) {

    public JointScope {
        open = Set.copyOf(open);
        beyondContacts = Set.copyOf(beyondContacts);
    }
}
