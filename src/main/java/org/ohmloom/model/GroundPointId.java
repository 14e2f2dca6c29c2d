package org.ohmloom.model;

/**
 * Identity of a ground point; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code G1}; see {@link ElementId#check(String)}
 */
public record GroundPointId(String value) implements ElementId {

    public GroundPointId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
