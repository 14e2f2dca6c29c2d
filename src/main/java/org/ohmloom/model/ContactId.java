package org.ohmloom.model;

/**
 * Identity of a kind of contact in the harness's own parts list; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code CT-A}; see {@link ElementId#check(String)}
 */
public record ContactId(String value) implements ElementId {

    public ContactId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
