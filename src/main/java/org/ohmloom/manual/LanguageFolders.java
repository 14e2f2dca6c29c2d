package org.ohmloom.manual;

import java.util.Locale;
import java.util.stream.Stream;

/**
 * Where the manual has a page or picture in a language: in the folder of that language, named by its tag as {@code de-AT} or
 * {@code de}; what lies in no such folder is read in English, beside them.
 */
final class LanguageFolders {

    private LanguageFolders() {}

    /** The places to look in, the nearest to the language first. */
    static Stream<String> places(Locale language, String name) {
        Stream<String> folders = language.equals(Locale.ROOT)
                ? Stream.of()
                : Stream.of(language.toLanguageTag(), language.getLanguage());
        return Stream.concat(folders.distinct().map(folder -> folder + "/" + name), Stream.of(name));
    }
}
