package org.ohmloom.model;

/**
 * Identity of a wire; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code W12}; see {@link ElementId#check(String)}
 */
public record WireId(String value) implements ElementId {

    public WireId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
