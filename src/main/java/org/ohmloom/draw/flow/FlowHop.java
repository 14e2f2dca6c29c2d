package org.ohmloom.draw.flow;

/**
 * A stretch of a way from one column to the next.
 *
 * @param edge  the way
 * @param from  slot in the one column
 * @param to    slot in the next
 * @param first whether it begins at a node
 * @param last  whether it ends at a node
 */
record FlowHop(FlowEdge edge, FlowSlot from, FlowSlot to, boolean first, boolean last) {

    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
