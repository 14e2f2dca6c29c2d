package org.ohmloom.model;

/**
 * Identity of a reading of a built harness; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code BR1}; see {@link ElementId#check(String)}
 */
public record ReadingId(String value) implements ElementId {

    public ReadingId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
