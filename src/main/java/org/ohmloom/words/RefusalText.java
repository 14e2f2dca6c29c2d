package org.ohmloom.words;

import java.util.List;
import java.util.Locale;

/** A sentence written in English where it is said. */
record RefusalText(String template, List<Object> values) implements Text {

    RefusalText(String template, Object... values) {
        this(template, List.of(values));
    }

    /** In a language; as it stands in the code where no bundle has it, which is said to programmers only. */
    @Override
    public String in(Locale language) {
        String key = language.equals(Locale.ROOT) ? "" : Refusals.key(template);
        if (!key.isEmpty() && Refusals.SENTENCES.has(key)) {
            return Refusals.SENTENCES.get(language, key, values.toArray());
        }
        return values.isEmpty() ? template : String.format(Locale.ROOT, template, values.toArray());
    }

    @Override
    public String toString() {
        return english();
    }
}
