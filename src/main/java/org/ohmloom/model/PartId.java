package org.ohmloom.model;

/**
 * Identity of an entry of the parts list; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code EX-H-04}; see {@link ElementId#check(String)}
 */
public record PartId(String value) implements ElementId {

    public PartId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
