package org.ohmloom.workbench.words;

import java.text.Format;
import java.text.MessageFormat;
import java.util.Enumeration;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;

/**
 * What a person reads, from the message bundle of one topic, in the language the display has
 * ({@link Locale.Category#DISPLAY}) when it is asked for. The bundles lie beside this class as {@code topic.properties},
 * UTF-8, their values patterns of {@link MessageFormat} (an apostrophe is the typographic one, or stands twice). In the locale
 * {@code en-XA} every text comes out accented and about 40 % longer, so that a window can be tried with a language nobody has
 * translated yet.
 */
public final class Words {

    /** The locale of the made-up language (Unicode CLDR: pseudo-accents). */
    public static final Locale PSEUDO = Locale.forLanguageTag("en-XA");

    private static final String PLACE = "org.ohmloom.workbench.words.";
    private static final ResourceBundle.Control BASE_ONLY =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final String topic;

    private Words(String topic) {
        this.topic = topic;
    }

    /**
     * The words of a topic.
     *
     * @param topic name of the bundle, as {@code layout}
     */
    public static Words of(String topic) {
        return new Words(topic);
    }

    /**
     * A text with its gaps filled.
     *
     * @param key    as it stands in the bundle
     * @param values what goes into {0}, {1}, ...; a count goes into {0,choice,...} as a number, everything else as the text
     *               it is, numbers written as the person wants them
     * @throws java.util.MissingResourceException without such a bundle or key
     */
    public String get(String key, Object... values) {
        return text(Locale.getDefault(Locale.Category.DISPLAY), key, values);
    }

    /** A text without gaps, where the bundle has it. */
    public Optional<String> find(String key) {
        boolean there = bundle(Locale.ROOT).containsKey(key);
        return there ? Optional.of(get(key)) : Optional.empty();
    }

    private String text(Locale locale, String key, Object... values) {
        String pattern = bundle(locale).getString(key);
        String spoken = locale.equals(PSEUDO) ? PseudoLanguage.of(pattern) : pattern;
        if (spoken.indexOf('{') < 0 && spoken.indexOf('\'') < 0) {
            return spoken;
        }
        MessageFormat format = new MessageFormat(spoken, Locale.ROOT);
        Format[] kinds = format.getFormatsByArgumentIndex();
        Object[] given = values.clone();
        for (int at = 0; at < given.length; at++) {
            if (at >= kinds.length || kinds[at] == null) {
                given[at] = String.valueOf(given[at]);
            }
        }
        return format.format(given);
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
                return text(Locale.ROOT, key);
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
        return bundle(Locale.getDefault(Locale.Category.DISPLAY))
                .getString(key + ".letter")
                .charAt(0);
    }

    /** Every key of the topic, in no order. */
    public Enumeration<String> keys() {
        return bundle(Locale.ROOT).getKeys();
    }

    private ResourceBundle bundle(Locale locale) {
        return ResourceBundle.getBundle(PLACE + topic, locale, BASE_ONLY);
    }
}
