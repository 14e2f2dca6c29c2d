package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;

import java.util.Optional;

/**
 * A remark, on the whole harness or on one element.
 *
 * @param id    identity
 * @param about id of the element it is about
 * @param text  the remark
 */
public record Note(NoteId id, Optional<String> about, String text) implements Element {

    public Note {
        notBlank(text, "text of note %s", id);
    }
}
