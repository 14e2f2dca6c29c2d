package org.ohmloom.graph;

import java.util.Optional;
import org.ohmloom.model.ElementId;

/**
 * One conducting element of the harness in one operating state.
 *
 * @param id      identity, the same in every state
 * @param kind    what it is made of
 * @param from    one end
 * @param to      the other end; for loads and coils {@code from} is the positive end, for sources the negative one
 * @param element the element of the model it belongs to
 * @param law     how current and voltage hang together in this state
 */
public record Branch(BranchId id, BranchKind kind, PointId from, PointId to, Optional<ElementId> element, Law law) {

    /** Whether it is a conductor or a contact, whatever the state. */
    public boolean isPlain() {
        return kind.part() == BranchKind.Part.CONDUCTOR || kind.part() == BranchKind.Part.CONTACT;
    }

    /** Whether it is a conductor or a contact that is a resistance in this state. */
    public boolean isPlainResistance() {
        return isPlain() && law instanceof Law.Resistance;
    }

    /** The same element with another law. */
    Branch withLaw(Law other) {
        return law == other ? this : new Branch(id, kind, from, to, element, other);
    }
}
