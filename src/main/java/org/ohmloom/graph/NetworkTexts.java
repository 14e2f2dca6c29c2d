package org.ohmloom.graph;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What a network takes for granted, how sources were worked out and which readings it cannot use, from the bundle {@code networks}. */
final class NetworkTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(NetworkTexts.class, "networks");

    private NetworkTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
