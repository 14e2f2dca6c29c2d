package org.ohmloom.signal;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What is said of sensors, channels and buses, from the bundle {@code signals}. */
public final class SignalTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(SignalTexts.class, "signals");

    private SignalTexts() {}

    /** A text of the bundle with its gaps filled. */
    public static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
