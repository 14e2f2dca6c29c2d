package org.ohmloom.bench;

import java.util.Locale;
import org.ohmloom.model.Measured;
import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What a measured value is held against and what was measured, from the bundle {@code tests}. */
public final class TestTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(TestTexts.class, "tests");

    private TestTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }

    /** What was measured, in words that follow "a reading of". */
    public static Text measured(Measured measured) {
        String kind = measured.getClass().getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-");
        return text("measured." + kind.toLowerCase(Locale.ROOT));
    }
}
