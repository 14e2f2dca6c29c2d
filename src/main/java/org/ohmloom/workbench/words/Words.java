package org.ohmloom.workbench.words;

import java.text.MessageFormat;
import java.util.Enumeration;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * What a person reads, from the message bundle of one topic, in the language of the display
 * ({@link Locale.Category#DISPLAY}). The bundles lie beside this class as {@code topic.properties}, UTF-8, their values
 * patterns of {@link MessageFormat} (an apostrophe is the typographic one). In the locale {@code en-XA} every text comes
 * out accented and about 40 % longer, so that a window can be tried with a language nobody has translated yet.
 */
public final class Words {

    /** The locale of the made-up language (Unicode CLDR: pseudo-accents). */
    public static final Locale PSEUDO = Locale.forLanguageTag("en-XA");

    private static final String PLACE = "org.ohmloom.workbench.words.";
    private static final ResourceBundle.Control BASE_ONLY =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final ResourceBundle bundle;
    private final Locale locale;

    private Words(String topic, Locale locale) {
        this.locale = locale;
        this.bundle = ResourceBundle.getBundle(PLACE + topic, locale, BASE_ONLY);
    }

    /**
     * The words of a topic.
     *
     * @param topic name of the bundle, as {@code layout}
     * @throws java.util.MissingResourceException without such a bundle
     */
    public static Words of(String topic) {
        return new Words(topic, Locale.getDefault(Locale.Category.DISPLAY));
    }

    /**
     * A text with its gaps filled.
     *
     * @param key    as it stands in the bundle
     * @param values what goes into {0}, {1}, ...; numbers are handed in as texts, written as the person wants them
     * @throws java.util.MissingResourceException without such a key
     */
    public String get(String key, Object... values) {
        String pattern = bundle.getString(key);
        String spoken = locale.equals(PSEUDO) ? PseudoLanguage.of(pattern) : pattern;
        return new MessageFormat(spoken, Locale.ROOT).format(values);
    }

    /** The letter to underline: the first of the text in the bundle under this key with {@code .letter} behind it. */
    public char letter(String key) {
        return bundle.getString(key + ".letter").charAt(0);
    }

    /** Every key of the topic, in no order. */
    public Enumeration<String> keys() {
        return bundle.getKeys();
    }
}
