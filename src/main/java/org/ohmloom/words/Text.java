package org.ohmloom.words;

import java.util.List;
import java.util.Locale;

/**
 * Something a person reads, said in whatever language it is asked for. Texts are equal when they say the same from the same keys
 * and values.
 */
public interface Text {

    /** Nothing. */
    Text NONE = new TypedText("");

    /** The text in a language; in one that nobody has written it in, in English. */
    String in(Locale language);

    /** The text in English, as files, the command line and the pack have it. */
    default String english() {
        return in(Locale.ROOT);
    }

    /** What is the same in every language: an id, a number with its unit, a name as typed, a citation; a text as it is. */
    static Text of(Object given) {
        return given instanceof Text text ? text : new TypedText(String.valueOf(given));
    }

    /** Texts one after the other. */
    static Text joined(String between, List<? extends Text> parts) {
        return new JoinedText(between, List.copyOf(parts));
    }

    /** Texts in English, one by one. */
    static List<String> english(List<? extends Text> texts) {
        return texts.stream().map(Text::english).toList();
    }

    /** Whether it says nothing. */
    default boolean isEmpty() {
        return english().isEmpty();
    }

    /** The text in lower case. */
    default Text lowerCase() {
        return new LowerCaseText(this, Integer.MAX_VALUE);
    }

    /** The text as it goes on in a sentence, its first letter in lower case. */
    default Text goingOn() {
        return new LowerCaseText(this, 1);
    }
}
