package org.ohmloom.model;

/**
 * Identity of an operating state; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code cruise}; see {@link ElementId#check(String)}
 */
public record StateId(String value) implements ElementId {

    public StateId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
