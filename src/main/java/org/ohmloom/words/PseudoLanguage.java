package org.ohmloom.words;

import java.util.Locale;

/**
 * English made strange: every letter accented, the text 40 % longer and in brackets, its gaps left as they are; so a window can be
 * tried with a language nobody has translated yet.
 */
public final class PseudoLanguage {

    /** The locale of the made-up language (Unicode CLDR: pseudo-accents). */
    public static final Locale LOCALE = Locale.forLanguageTag("en-XA");

    private static final String PLAIN = "aAbBcCdDeEfFgGhHiIjJkKlLmMnNoOpPqQrRsStTuUvVwWxXyYzZ";
    private static final String STRANGE = "åÅƀƁçÇðÐéÉƒƑĝĜĥĤîÎĵĴķĶļĻɱṀñÑöÖþÞqQŕŔšŠţŢûÛvVŵŴxXýÝžŽ";
    private static final String FILLER = "öñé ţŵö ţĥŕéé ƒöûŕ ƒîvé šîx šévéñ éîĝĥţ ñîñé ţéñ ";

    /** How much longer a text becomes, as a fraction of its own length. */
    static final double LONGER = 0.4;

    private PseudoLanguage() {}

    /** A pattern of a message bundle in the made-up language. */
    static String of(String pattern) {
        StringBuilder strange = new StringBuilder("[");
        int depth = 0;
        boolean inChoice = false;
        for (int at = 0; at < pattern.length(); at++) {
            char letter = pattern.charAt(at);
            depth += letter == '{' ? 1 : letter == '}' ? -1 : 0;
            // in {0,choice,0#none|1#one} what stands behind a # or < is text too
            inChoice = depth == 1 && letter != '|' && (inChoice || letter == '#' || letter == '<')
                    || depth > 1 && inChoice;
            boolean text = depth == 0 || depth == 1 && inChoice;
            int known = text ? PLAIN.indexOf(letter) : -1;
            strange.append(known < 0 ? letter : STRANGE.charAt(known));
        }
        int more = (int) Math.ceil(pattern.length() * LONGER) - 2;
        for (int at = 0; at < more; at++) {
            strange.append(FILLER.charAt(at % FILLER.length()));
        }
        return strange.append(']').toString();
    }
}
