package org.ohmloom.review;

import static org.ohmloom.units.Require.that;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence with named places, {@code "{wire} carries {current}."}, and what goes there: one line of at most
 * {@link #MOST_CHARACTERS}. What a person named at length is cut, the longest first, until the sentence fits; where a language
 * says at such length that this is not enough, its end.
 */
final class Sentence {

    /** Most characters of a finding's message. */
    static final int MOST_CHARACTERS = 160;

    /** A text this short is never cut. */
    private static final int SHORT_CHARACTERS = 12;

    private static final Pattern PLACE = Pattern.compile("\\{([a-z]+)}");
    private static final Pattern SPACE = Pattern.compile("[\\s\\p{Cntrl}\\u2028\\u2029]+");

    private Sentence() {}

    /**
     * Fills the places.
     *
     * @throws IllegalArgumentException when the template has a place without a text
     */
    static String of(String template, Map<String, String> texts) {
        Map<String, String> fitting = new LinkedHashMap<>();
        texts.forEach((name, text) -> fitting.put(name, SPACE.matcher(text).replaceAll(" ")));
        String sentence = filled(template, fitting);
        while (sentence.length() > MOST_CHARACTERS) {
            List<String> longest = fitting.keySet().stream()
                    .filter(name -> template.contains("{" + name + "}"))
                    .sorted(Comparator.comparing(
                            (String name) -> -fitting.get(name).length()))
                    .toList();
            String text = fitting.get(longest.get(0));
            if (text.length() <= SHORT_CHARACTERS) {
                return cut(sentence, MOST_CHARACTERS);
            }
            int next = longest.size() > 1 ? fitting.get(longest.get(1)).length() : 0;
            int least = Math.max(SHORT_CHARACTERS, text.length() - (sentence.length() - MOST_CHARACTERS));
            fitting.put(longest.get(0), cut(text, Math.max(least, Math.min(next, text.length() - 1))));
            sentence = filled(template, fitting);
        }
        return sentence;
    }

    private static String filled(String template, Map<String, String> texts) {
        return PLACE.matcher(template).replaceAll(place -> {
            String text = texts.get(place.group(1));
            that(text != null, "place %s is not filled in: %s", place.group(1), template);
            return Matcher.quoteReplacement(text);
        });
    }

    private static String cut(String text, int length) {
        int end = length - 1;
        if (Character.isHighSurrogate(text.charAt(end - 1))) {
            end--;
        }
        return text.substring(0, end) + "…";
    }
}
