package org.ohmloom.workbench.words;

/** English made strange: every letter accented, the text 40 % longer and in brackets, its gaps left as they are. */
final class PseudoLanguage {

    private static final String PLAIN = "aAbBcCdDeEfFgGhHiIjJkKlLmMnNoOpPqQrRsStTuUvVwWxXyYzZ";
    private static final String STRANGE = "åÅƀƁçÇðÐéÉƒƑĝĜĥĤîÎĵĴķĶļĻɱṀñÑöÖþÞqQŕŔšŠţŢûÛvVŵŴxXýÝžŽ";
    private static final String FILLER = "one two three four five six seven eight nine ten ";

    /** How much longer a text becomes, as a fraction of its own length. */
    static final double LONGER = 0.4;

    private PseudoLanguage() {}

    static String of(String pattern) {
        StringBuilder strange = new StringBuilder("[");
        int depth = 0;
        for (int at = 0; at < pattern.length(); at++) {
            char letter = pattern.charAt(at);
            depth += letter == '{' ? 1 : letter == '}' ? -1 : 0;
            int known = depth > 0 ? -1 : PLAIN.indexOf(letter);
            strange.append(known < 0 ? letter : STRANGE.charAt(known));
        }
        int more = (int) Math.ceil(pattern.length() * LONGER) - 2;
        for (int at = 0; at < more; at++) {
            strange.append(FILLER.charAt(at % FILLER.length()));
        }
        return strange.append(']').toString();
    }
}
