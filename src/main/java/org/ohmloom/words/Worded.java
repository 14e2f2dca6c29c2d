package org.ohmloom.words;

/** What is thrown with a sentence for a person, who may read it in another language than English. */
public interface Worded {

    /** What it says. */
    Text words();

    /** What something thrown says; what carries no text says its message, or by lack of one what it is. */
    static Text of(Throwable thrown) {
        if (thrown instanceof Worded worded) {
            return worded.words();
        }
        return Text.of(thrown.getMessage() == null ? thrown.getClass().getSimpleName() : thrown.getMessage());
    }
}
