package org.ohmloom.review;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.ohmloom.words.Text;

/**
 * What a finding says: a sentence of the bundle of rules, the parts it has, and what goes into their places.
 *
 * @param key    of the sentence
 * @param parts  by the name of its place in the sentence, the key of a part with places of its own; blank where it is left out
 * @param places what goes into the places that remain
 */
record FindingText(String key, Map<String, String> parts, Map<String, Text> places) implements Text {

    FindingText {
        parts = Map.copyOf(parts);
        places = Collections.unmodifiableMap(new LinkedHashMap<>(places));
    }

    @Override
    public String in(Locale language) {
        String template = pattern(language, key);
        for (Map.Entry<String, String> part : parts.entrySet()) {
            String pattern = part.getValue().isBlank() ? "" : pattern(language, part.getValue());
            template = template.replace("{" + part.getKey() + "}", pattern);
        }
        Map<String, String> texts = new LinkedHashMap<>();
        places.forEach((name, text) -> texts.put(name, text.in(language)));
        return Sentence.of(template, texts);
    }

    @Override
    public String toString() {
        return english();
    }

    private static String pattern(Locale language, String key) {
        return RuleInfo.TEXTS.pattern(language, key).replace("''", "'");
    }
}
