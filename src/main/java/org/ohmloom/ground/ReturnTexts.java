package org.ohmloom.ground;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What is said of return paths, from the bundle {@code returns}. */
final class ReturnTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(ReturnTexts.class, "returns");

    private ReturnTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
