package org.ohmloom.draw.flow;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What the picture of the currents says, from the bundle {@code flows}. */
final class FlowTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(FlowTexts.class, "flows");

    private FlowTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
