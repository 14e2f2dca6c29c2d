package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ohmloom.words.UnfitException;

/**
 * How a row of names is made: text that stands as it is, with places in braces.
 * <ul>
 *   <li>{@code {1}} counts from 1; {@code {001}} the same with three digits at least; {@code {10+5}} from 10 in fives.
 *   <li>{@code {old}} is the name of before, {@code {letters}} what stands before its last number, {@code {number}} that number,
 *       {@code {number+100}} and {@code {number-20}} the number moved.
 *   <li>{@code {circuit}} or another word is what the thing says of itself, where it does.
 * </ul>
 */
public final class NamePattern {

    private static final Pattern PLACE = Pattern.compile("\\{([^{}]*)\\}");
    private static final Pattern COUNT = Pattern.compile("(\\d{1,9})(?:\\+(\\d{1,6}))?");
    private static final Pattern NUMBER = Pattern.compile("number(?:([+-])(\\d{1,9}))?");
    private static final Pattern WORD = Pattern.compile("\\p{L}+");
    private static final Pattern LAST_NUMBER = Pattern.compile("(\\d+)(?!.*\\d)");

    private final List<Piece> pieces;

    private NamePattern(List<Piece> pieces) {
        this.pieces = List.copyOf(pieces);
    }

    /** Something that has a name. */
    private record Subject(int index, String old, Function<String, Optional<String>> says) {}

    /** A piece of a name; refuses a subject that lacks what it needs. */
    private interface Piece {
        String of(Subject subject);
    }

    /**
     * Reads a pattern.
     *
     * @throws IllegalArgumentException when a place in braces means nothing; the message says what would be right
     */
    public static NamePattern parse(String text) {
        if (text.isBlank()) {
            throw new UnfitException("a pattern is needed, such as W{001}");
        }
        List<Piece> pieces = new ArrayList<>();
        Matcher places = PLACE.matcher(text);
        int from = 0;
        while (places.find()) {
            literal(text.substring(from, places.start()), pieces);
            pieces.add(place(places.group(1).strip()));
            from = places.end();
        }
        literal(text.substring(from), pieces);
        return new NamePattern(pieces);
    }

    private static void literal(String text, List<Piece> pieces) {
        if (text.contains("{") || text.contains("}")) {
            throw new UnfitException("a brace in '%s' has no partner; a place is written {1} or {old}", text);
        }
        if (!text.isEmpty()) {
            pieces.add(subject -> text);
        }
    }

    private static Piece place(String inside) {
        Matcher count = COUNT.matcher(inside);
        if (count.matches()) {
            long first = Long.parseLong(count.group(1));
            long step = count.group(2) == null ? 1 : Long.parseLong(count.group(2));
            int digits = count.group(1).length();
            return subject -> padded(first + step * subject.index(), digits);
        }
        Matcher number = NUMBER.matcher(inside);
        if (number.matches()) {
            long by = number.group(2) == null ? 0 : Long.parseLong(number.group(2));
            long moved = "-".equals(number.group(1)) ? -by : by;
            return subject -> moved(subject.old(), moved);
        }
        return switch (inside) {
            case "old" -> Subject::old;
            case "letters" -> subject -> letters(subject.old());
            default -> word(inside);
        };
    }

    private static Piece word(String inside) {
        if (!WORD.matcher(inside).matches()) {
            throw new UnfitException(
                    "%s means nothing; write {1}, {001} or {10+5} to count, {number+100} to move numbers, {old} or {letters}",
                    "{" + inside + "}");
        }
        return subject -> subject.says()
                .apply(inside)
                .filter(said -> !said.isBlank())
                .orElseThrow(() -> new UnfitException("%s has no %s", subject.old(), inside));
    }

    private static String padded(long number, int digits) {
        String text = Long.toString(number);
        return "0".repeat(Math.max(0, digits - text.length())) + text;
    }

    private static String letters(String old) {
        Matcher last = LAST_NUMBER.matcher(old);
        return last.find() ? old.substring(0, last.start()) : old;
    }

    private static String moved(String old, long by) {
        Matcher last = LAST_NUMBER.matcher(old);
        if (!last.find() || last.group(1).length() > 15) {
            throw new UnfitException("%s has no number", old);
        }
        long number = Long.parseLong(last.group(1)) + by;
        if (number < 0) {
            throw new UnfitException("the number of %s would fall below 0", old);
        }
        return padded(number, last.group(1).length());
    }

    /**
     * The name of one thing.
     *
     * @param index how many come before it, 0 or more
     * @param old   its name of before
     * @param says  what it says of itself by a word, such as its circuit
     * @throws IllegalArgumentException when it lacks what the pattern asks for
     */
    public String name(int index, String old, Function<String, Optional<String>> says) {
        Subject subject = new Subject(index, old, says);
        StringBuilder name = new StringBuilder();
        pieces.forEach(piece -> name.append(piece.of(subject)));
        return name.toString();
    }
}
