package org.ohmloom.workbench.window;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** The last things a person asked for, so that an error report can say what led to it. */
final class Journal {

    private static final int KEPT = 20;

    private final Deque<String> notes = new ArrayDeque<>();

    void note(String what) {
        notes.addLast(what);
        if (notes.size() > KEPT) {
            notes.removeFirst();
        }
    }

    /** The notes, oldest first. */
    List<String> notes() {
        return List.copyOf(notes);
    }
}
