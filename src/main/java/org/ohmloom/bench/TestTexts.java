package org.ohmloom.bench;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What a measured value is held against, from the bundle {@code tests}. */
final class TestTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(TestTexts.class, "tests");

    private TestTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
