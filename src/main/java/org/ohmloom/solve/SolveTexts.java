package org.ohmloom.solve;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What is said of networks, starts and batteries, from the bundle {@code solutions}. */
public final class SolveTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(SolveTexts.class, "solutions");

    private SolveTexts() {}

    /** A text of the bundle with its gaps filled. */
    public static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
