package org.ohmloom.model;

/**
 * Identity of a bonding strap between two ground points; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code ST1}; see {@link ElementId#check(String)}
 */
public record StrapId(String value) implements ElementId {

    public StrapId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
