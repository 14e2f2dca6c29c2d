package org.ohmloom.model;

/**
 * Identity of a waiver; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code WV1}; see {@link ElementId#check(String)}
 */
public record WaiverId(String value) implements ElementId {

    public WaiverId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
