package org.ohmloom.graph;

import static org.ohmloom.units.Require.notBlank;

import org.ohmloom.model.NaturalOrder;

/**
 * Identity of a branch of the electrical network: the wire's own id for a wire, otherwise the element with a part of
 * its own, for example {@code X1.3} for a contact or {@code K1.30-87} for a relay contact.
 *
 * @param value the text
 */
public record BranchId(String value) implements Comparable<BranchId> {

    public BranchId {
        notBlank(value, "branch");
    }

    @Override
    public int compareTo(BranchId other) {
        return NaturalOrder.INSTANCE.compare(value, other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
