package org.ohmloom.words;

import java.util.Locale;

/**
 * A text whose first letters are in lower case.
 *
 * @param text    the text
 * @param letters how many of its letters at most
 */
record LowerCaseText(Text text, int letters) implements Text {

    @Override
    public String in(Locale language) {
        String said = text.in(language);
        int end = Math.min(letters, said.length());
        return said.substring(0, end).toLowerCase(Locale.ROOT) + said.substring(end);
    }

    @Override
    public String toString() {
        return english();
    }
}
