package org.ohmloom.model;

/**
 * Identity of a zone; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code engine-bay}; see {@link ElementId#check(String)}
 */
public record ZoneId(String value) implements ElementId {

    public ZoneId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
