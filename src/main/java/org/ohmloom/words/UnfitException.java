package org.ohmloom.words;

import org.jspecify.annotations.Nullable;

/** Something a person entered does not fit; one sentence says what is wrong and what would be right. */
public class UnfitException extends IllegalArgumentException implements Worded {

    private static final long serialVersionUID = 1L;

    private final transient Text words;

    /** A refusal in a sentence of the bundle {@code refusals}, as {@link Refusals#text} takes it. */
    public UnfitException(String template, Object... values) {
        this(Refusals.text(template, values));
    }

    /** A refusal in a text. */
    public UnfitException(Text words) {
        this(words, null);
    }

    /** A refusal in a text, for what another one says. */
    public UnfitException(Text words, @Nullable Throwable cause) {
        super(words.english(), cause);
        this.words = words;
    }

    /** What it says; in English once it was sent elsewhere, where texts do not go. */
    @Override
    public Text words() {
        return words == null ? Text.of(getMessage()) : words;
    }
}
