package org.ohmloom.model;

/**
 * Identity of a chassis body; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code frame}; see {@link ElementId#check(String)}
 */
public record ChassisBodyId(String value) implements ElementId {

    public ChassisBodyId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
