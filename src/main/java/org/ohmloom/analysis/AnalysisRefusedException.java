package org.ohmloom.analysis;

import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;
import org.ohmloom.words.Worded;

/** Thrown when a harness cannot be analysed at all, for example because its design basis is not known. */
public final class AnalysisRefusedException extends RuntimeException implements Worded {

    private static final long serialVersionUID = 1L;

    private final transient Text words;

    /** Refuses with one line that says what is wrong and what would be right, as {@link Refusals#text} takes it. */
    public AnalysisRefusedException(String template, Object... values) {
        this(Refusals.text(template, values));
    }

    private AnalysisRefusedException(Text words) {
        super(words.english());
        this.words = words;
    }

    /** What it says; in English once it was sent elsewhere, where texts do not go. */
    @Override
    public Text words() {
        return words == null ? Text.of(getMessage()) : words;
    }
}
