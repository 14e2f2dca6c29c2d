package org.ohmloom.model;

/**
 * Identity of a component; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code BAT1}; see {@link ElementId#check(String)}
 */
public record ComponentId(String value) implements ElementId {

    public ComponentId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
