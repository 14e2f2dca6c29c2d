package org.ohmloom.size.protection;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What is said of short circuits and rated voltages, from the bundle {@code faults}. */
final class FaultTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(FaultTexts.class, "faults");

    private FaultTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
