package org.ohmloom.store;

import java.util.Locale;
import java.util.regex.Pattern;
import org.ohmloom.words.Text;

/** A text on one line, whatever the file it quotes holds: control characters become a blank. */
record OneLine(Text text) implements Text {
    private static final Pattern CONTROLS = Pattern.compile("[\\p{Cc}\\u2028\\u2029]+");

    @Override
    public String in(Locale language) {
        return CONTROLS.matcher(text.in(language)).replaceAll(" ");
    }

    @Override
    public String toString() {
        return english();
    }
}
