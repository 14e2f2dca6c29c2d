package org.ohmloom.words;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Texts one after the other. */
record JoinedText(String between, List<Text> parts) implements Text {

    @Override
    public String in(Locale language) {
        return parts.stream().map(each -> each.in(language)).collect(Collectors.joining(between));
    }

    @Override
    public String toString() {
        return english();
    }
}
