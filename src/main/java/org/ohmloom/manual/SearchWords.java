package org.ohmloom.manual;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Words as they are searched for: runs of letters and digits in lower case, a plural as its singular. */
public final class SearchWords {

    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+");
    private static final int SHORTEST_PLURAL = 4;

    private SearchWords() {}

    /** A word and where it stands. */
    public record Place(String word, int start, int end) {}

    /** Every word of a text with its place. */
    public static List<Place> places(String text) {
        List<Place> places = new ArrayList<>();
        Matcher matcher = WORD.matcher(text);
        while (matcher.find()) {
            places.add(new Place(singular(matcher.group().toLowerCase(Locale.ROOT)), matcher.start(), matcher.end()));
        }
        return places;
    }

    /** Every word of a text. */
    public static List<String> of(String text) {
        return places(text).stream().map(Place::word).toList();
    }

    /** Whether a word of a page is meant by a word somebody typed: the same, or as it begins. */
    public static boolean fits(String word, String typed) {
        return word.startsWith(typed);
    }

    private static String singular(String word) {
        boolean plural = word.length() >= SHORTEST_PLURAL && word.endsWith("s") && !word.endsWith("ss");
        return plural ? word.substring(0, word.length() - 1) : word;
    }
}
