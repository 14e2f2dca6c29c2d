package org.ohmloom.words;

import java.util.Locale;

/**
 * What is said where something is refused. A refusal is written in English where it is thrown, so that a constructor can be read on its
 * own; the bundle {@code refusals} has the same sentence by a key made of its words, and other languages beside it.
 */
public final class Refusals {

    /** The bundle, which a test writes anew from what the code says. */
    static final MessageBundle SENTENCES = MessageBundle.beside(Refusals.class, "refusals");

    private Refusals() {}

    /**
     * A sentence, or the name of what it is about.
     *
     * @param template in English, a format of {@link String#format} whose gaps are all {@code %s}; as it stands without values
     * @param values   what goes into the gaps: a text is said in the language asked for
     */
    public static Text text(String template, Object... values) {
        return new RefusalText(template, values);
    }

    /** The key of a sentence in the bundle: its words in lower case, an x for each gap, a hyphen for what stands between and behind them. */
    static String key(String template) {
        return template.replace("%s", " x ")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-", "");
    }
}
