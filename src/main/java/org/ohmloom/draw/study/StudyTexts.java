package org.ohmloom.draw.study;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What studies say of what they draw, from the bundle {@code studies}. */
final class StudyTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(StudyTexts.class, "studies");

    private StudyTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
