package org.ohmloom.model;

/**
 * Identity of a multicore cable or twisted pair; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code C1}; see {@link ElementId#check(String)}
 */
public record CableId(String value) implements ElementId {

    public CableId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
