package org.ohmloom.signal.pins;

import java.util.List;
import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What is said of assignments to pins, from the bundle {@code pins}. */
final class PinTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(PinTexts.class, "pins");

    private PinTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }

    /** Some things, all of them or any. */
    static Text linked(String key, List<Text> things) {
        return things.stream().reduce((before, next) -> text(key, before, next)).orElse(Text.NONE);
    }
}
