package org.ohmloom.size;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** Why a conductor or a device has its size, from the bundle {@code sizes}. */
final class SizeTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(SizeTexts.class, "sizes");

    private SizeTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
