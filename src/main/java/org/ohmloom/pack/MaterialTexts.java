package org.ohmloom.pack;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What things are on a bill of materials, from the bundle {@code materials}. */
final class MaterialTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(MaterialTexts.class, "materials");

    private MaterialTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
