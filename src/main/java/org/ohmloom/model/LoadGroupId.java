package org.ohmloom.model;

/**
 * Identity of a group of loads; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code LG1}; see {@link ElementId#check(String)}
 */
public record LoadGroupId(String value) implements ElementId {

    public LoadGroupId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
