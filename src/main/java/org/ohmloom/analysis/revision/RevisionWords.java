package org.ohmloom.analysis.revision;

import java.util.Locale;
import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/**
 * What a comparison calls things, their fields and what is in them: by keys made of the English words, in a bundle that a test
 * writes from the model. What is typed has no key and stays as it is.
 */
final class RevisionWords {

    static final MessageBundle WORDS = MessageBundle.beside(RevisionWords.class, "revision-words");

    private RevisionWords() {}

    /** The text of some words. */
    static Text text(String words) {
        String key = key(words);
        return WORDS.has(key) && WORDS.get(Locale.ROOT, key).equals(words) ? WORDS.text(key) : Text.of(words);
    }

    /** The key of some words. */
    static String key(String words) {
        return words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }
}
