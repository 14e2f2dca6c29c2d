package org.ohmloom.workbench.words;

import java.util.Enumeration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;
import org.ohmloom.words.Worded;

/**
 * What a person reads, from the message bundle of one topic, in the language the display has
 * ({@link Locale.Category#DISPLAY}) when it is asked for. The bundles lie beside this class as {@code topic.properties}.
 */
public final class Words {

    private final MessageBundle bundle;

    private Words(MessageBundle bundle) {
        this.bundle = bundle;
    }

    /**
     * The words of a topic.
     *
     * @param topic name of the bundle, as {@code layout}
     */
    public static Words of(String topic) {
        return new Words(MessageBundle.beside(Words.class, topic));
    }

    /** The language the display has. */
    public static Locale language() {
        return Locale.getDefault(Locale.Category.DISPLAY);
    }

    /** A text from below the workbench in the language the display has. */
    public static String said(Text text) {
        return text.in(language());
    }

    /** What something thrown says, in the language the display has. */
    public static String said(Throwable thrown) {
        return said(Worded.of(thrown));
    }

    /** The same, one by one. */
    public static List<String> said(List<Text> texts) {
        return texts.stream().map(Words::said).toList();
    }

    /**
     * A text with its gaps filled.
     *
     * @param key    as it stands in the bundle
     * @param values what goes into {0}, {1}, ..., as {@link MessageBundle#get} takes it
     * @throws java.util.MissingResourceException without such a bundle or key
     */
    public String get(String key, Object... values) {
        return bundle.get(language(), key, values);
    }

    /** A text without gaps, with its key. */
    public Term term(String key) {
        return new Term(key, get(key));
    }

    /** The same, said when it is asked for: what an edit is called. */
    public Text text(String key, Object... values) {
        return bundle.text(key, values);
    }

    /** A text without gaps, where the bundle has it. */
    public Optional<String> find(String key) {
        return bundle.has(key) ? Optional.of(get(key)) : Optional.empty();
    }

    /**
     * What a typed word means: where it is the text of one of the keys in the language of the display, its English, as the
     * file format and the parsers know it; otherwise the word itself.
     *
     * @param typed as typed
     * @param keys  of the words that may be meant
     */
    public String meant(String typed, String... keys) {
        String word = typed.strip();
        for (String key : keys) {
            if (get(key).equalsIgnoreCase(word)) {
                return bundle.get(Locale.ROOT, key);
            }
        }
        return typed;
    }

    /**
     * What stands in the one gap of a text, where a typed text is that text in the language of the display, whatever its case.
     *
     * @param key   of a text with the gap {0}
     * @param typed as typed
     */
    public Optional<String> filling(String key, String typed) {
        String[] ends = get(key, "\n").split("\n", 2);
        boolean fits = typed.length() >= ends[0].length() + ends[1].length()
                && typed.regionMatches(true, 0, ends[0], 0, ends[0].length())
                && typed.endsWith(ends[1]);
        return fits
                ? Optional.of(typed.substring(ends[0].length(), typed.length() - ends[1].length())
                        .strip())
                : Optional.empty();
    }

    /** The letter to underline: the first of the text in the bundle under this key with {@code .letter} behind it. */
    public char letter(String key) {
        return bundle.written(language(), key + ".letter").charAt(0);
    }

    /** Every key of the topic, in no order. */
    public Enumeration<String> keys() {
        return bundle.keys();
    }
}
