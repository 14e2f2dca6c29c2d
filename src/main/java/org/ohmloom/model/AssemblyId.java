package org.ohmloom.model;

/**
 * Identity of an assembly; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code A1}; see {@link ElementId#check(String)}
 */
public record AssemblyId(String value) implements ElementId {

    public AssemblyId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
