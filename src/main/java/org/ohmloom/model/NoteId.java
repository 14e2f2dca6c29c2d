package org.ohmloom.model;

/**
 * Identity of a note; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code N1}; see {@link ElementId#check(String)}
 */
public record NoteId(String value) implements ElementId {

    public NoteId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
