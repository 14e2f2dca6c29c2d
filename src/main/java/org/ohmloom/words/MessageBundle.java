package org.ohmloom.words;

import java.text.Format;
import java.text.MessageFormat;
import java.util.Enumeration;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * The texts of one topic, {@code topic.properties} in UTF-8 beside a class. Its values are patterns of {@link MessageFormat} (an
 * apostrophe is the typographic one, or stands twice), but where their head says otherwise. In {@link PseudoLanguage#LOCALE} every
 * text comes out accented and longer.
 *
 * @param name full name of the bundle
 */
public record MessageBundle(String name) {

    private static final ResourceBundle.Control BASE_ONLY =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    /** The bundle of a topic that lies beside a class. */
    public static MessageBundle beside(Class<?> place, String topic) {
        return new MessageBundle(place.getPackageName() + "." + topic);
    }

    /**
     * A text with its gaps filled.
     *
     * @param language in which language
     * @param key      as it stands in the bundle
     * @param values   what goes into {0}, {1}, ...: a text in the language, a count into {0,choice,...} as a number, everything
     *                 else as the text it is, numbers written as the person wants them
     * @throws java.util.MissingResourceException without such a bundle or key
     */
    public String get(Locale language, String key, Object... values) {
        String spoken = pattern(language, key);
        if (spoken.indexOf('{') < 0 && spoken.indexOf('\'') < 0) {
            return spoken;
        }
        MessageFormat format = new MessageFormat(spoken, Locale.ROOT);
        Format[] kinds = format.getFormatsByArgumentIndex();
        Object[] given = values.clone();
        for (int at = 0; at < given.length; at++) {
            if (at >= kinds.length || kinds[at] == null) {
                given[at] = Text.of(given[at]).in(language);
            }
        }
        return format.format(given);
    }

    /** The same, to be said in a language that is not known yet. */
    public Text text(String key, Object... values) {
        return new KeyedText(this, key, List.of(values));
    }

    /** A text with its gaps open. */
    public String pattern(Locale language, String key) {
        String written = written(language, key);
        return language.equals(PseudoLanguage.LOCALE) ? PseudoLanguage.of(written) : written;
    }

    /** What stands in the bundle, not made strange. */
    public String written(Locale language, String key) {
        return bundle(language).getString(key);
    }

    /** Whether the bundle has a text. */
    public boolean has(String key) {
        return bundle(Locale.ROOT).containsKey(key);
    }

    /** Every key of the topic, in no order. */
    public Enumeration<String> keys() {
        return bundle(Locale.ROOT).getKeys();
    }

    private ResourceBundle bundle(Locale language) {
        return ResourceBundle.getBundle(name, language, BASE_ONLY);
    }
}
