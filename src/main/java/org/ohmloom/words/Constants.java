package org.ohmloom.words;

import java.util.Locale;

/** What constants of the model and of results are called. */
public final class Constants {

    private static final MessageBundle NAMES = MessageBundle.beside(Constants.class, "constants");

    private Constants() {}

    /** What a constant is called, as trade people say it. */
    public static Text text(Enum<?> constant) {
        String kind = constant.getDeclaringClass().getName();
        String words =
                kind.substring(kind.lastIndexOf('.') + 1).replace('$', '-').replaceAll("(?<=[a-z])(?=[A-Z])", "-");
        return NAMES.text(
                (words + "." + constant.name()).toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
