package org.ohmloom.workbench.words;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** English words left in a text of the made-up language: whatever no person typed and no bundle said. */
public final class PlainWords {

    private static final Pattern WORD =
            Pattern.compile("(?<![\\p{L}\\p{N}_.'-])[A-Za-z][a-z]{3,}+(?![\\p{L}\\p{N}_…])");

    private final Set<String> typed = new TreeSet<>();

    /**
     * Words a person may have typed.
     *
     * @param texts what a person typed, at any length
     */
    public PlainWords(String texts) {
        Matcher words = WORD.matcher(texts);
        while (words.find()) {
            typed.add(words.group().toLowerCase(Locale.ROOT));
        }
    }

    /** The English words in a text, without what was typed. */
    public Set<String> in(String strange) {
        Set<String> left = new TreeSet<>();
        Matcher words = WORD.matcher(strange);
        while (words.find()) {
            left.add(words.group().toLowerCase(Locale.ROOT));
        }
        left.removeAll(typed);
        return left;
    }
}
