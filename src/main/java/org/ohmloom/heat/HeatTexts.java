package org.ohmloom.heat;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What is said of how warm conductors get, from the bundle {@code heat}. */
final class HeatTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(HeatTexts.class, "heat");

    private HeatTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
