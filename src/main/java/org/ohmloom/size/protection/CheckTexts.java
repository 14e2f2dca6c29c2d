package org.ohmloom.size.protection;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What the checks of a protective device say, from the bundle {@code checks}. */
final class CheckTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(CheckTexts.class, "checks");

    private CheckTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
