package org.ohmloom.ground.sensor;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What disturbs a reading and what could not be judged, from the bundle {@code readings}. */
final class ReadingTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(ReadingTexts.class, "readings");

    private ReadingTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
