package org.ohmloom.fuzz;

import org.jspecify.annotations.Nullable;

/** What a refusal is: one line for people. */
final class OneLine {

    private static final int MOST_CHARACTERS = 2_000;

    private OneLine() {}

    /** Fails unless a refusal says in one line of readable length what is wrong. */
    static void check(@Nullable String message) {
        if (message == null || message.isBlank()) {
            throw new AssertionError("a refusal without a word");
        }
        if (message.lines().count() > 1 || message.length() > MOST_CHARACTERS) {
            throw new AssertionError("not one line: " + message);
        }
    }
}
