package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Note;

/**
 * The notes of a harness that belong to one element each, flagged by number in their order.
 *
 * @param all the flags
 */
record NoteFlags(List<Flag> all) {

    /** No notes. */
    static final NoteFlags NONE = new NoteFlags(List.of());

    /**
     * One of them.
     *
     * @param name    what stands at the element, as "N1"
     * @param element id of the element
     * @param text    the note
     */
    record Flag(String name, String element, String text) {}

    NoteFlags {
        all = List.copyOf(all);
    }

    static NoteFlags of(Harness harness) {
        List<Flag> flags = new ArrayList<>();
        for (Note note : harness.notes().all()) {
            note.about().ifPresent(element -> flags.add(new Flag("N" + (flags.size() + 1), element, note.text())));
        }
        return new NoteFlags(flags);
    }

    /** The flags of an element, "N1 N4"; empty without notes. */
    String of(String element) {
        return all.stream()
                .filter(flag -> flag.element().equals(element))
                .map(Flag::name)
                .collect(Collectors.joining(" "));
    }
}
