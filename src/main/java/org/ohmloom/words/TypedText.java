package org.ohmloom.words;

import java.util.Locale;

/** What is the same in every language. */
record TypedText(String given) implements Text {

    @Override
    public String in(Locale language) {
        return given;
    }

    @Override
    public String toString() {
        return given;
    }
}
