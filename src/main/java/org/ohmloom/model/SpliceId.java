package org.ohmloom.model;

/**
 * Identity of a splice; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code S1}; see {@link ElementId#check(String)}
 */
public record SpliceId(String value) implements ElementId {

    public SpliceId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
