package org.ohmloom.words;

import org.jspecify.annotations.Nullable;

/** Something from outside the program cannot be taken or given; one sentence says what is wrong and what would be right. */
public abstract class WordedException extends Exception implements Worded {

    private static final long serialVersionUID = 1L;

    private final transient Text words;

    /** One line for people, and what led to it. */
    protected WordedException(Text words, @Nullable Throwable cause) {
        super(words.english(), cause);
        this.words = words;
    }

    /** What it says; in English once it was sent elsewhere, where texts do not go. */
    @Override
    public Text words() {
        return words == null ? Text.of(getMessage()) : words;
    }
}
