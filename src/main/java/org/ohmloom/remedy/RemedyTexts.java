package org.ohmloom.remedy;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What is said of remedies, from the bundle {@code remedies}. */
final class RemedyTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(RemedyTexts.class, "remedies");

    private RemedyTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
