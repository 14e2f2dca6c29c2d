package org.ohmloom.words;

import java.util.List;
import java.util.Locale;

/** A text of a message bundle with its gaps filled. */
record KeyedText(MessageBundle bundle, String key, List<Object> values) implements Text {

    @Override
    public String in(Locale language) {
        return bundle.get(language, key, values.toArray());
    }

    @Override
    public String toString() {
        return english();
    }
}
