package org.ohmloom.analysis;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** How sizes were chosen together, from the bundle {@code joints}. */
final class JointTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(JointTexts.class, "joints");

    private JointTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
