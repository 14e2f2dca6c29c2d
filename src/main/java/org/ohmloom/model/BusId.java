package org.ohmloom.model;

/**
 * Identity of a data bus; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code CAN1}; see {@link ElementId#check(String)}
 */
public record BusId(String value) implements ElementId {

    public BusId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
