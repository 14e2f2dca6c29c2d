package org.ohmloom.pack.page;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.WireColour;

/**
 * One cell of a table.
 *
 * @param text   what it says; for a number without a text of its own empty
 * @param number its number in full precision, if it is one
 * @param colour the insulation colour it shows a sample of, if any
 * @param tone   how much it stands out
 */
public record Cell(String text, OptionalDouble number, Optional<WireColour> colour, Tone tone) {

    /** How much a cell stands out. */
    public enum Tone {
        /** As the rest. */
        PLAIN,
        /** In bold. */
        STRONG,
        /** Of second rank. */
        SOFT,
        /** To be looked at: missing, or over a limit. Bold as well, so that it shows without colour. */
        ALERT
    }

    private static final Cell EMPTY = text("");

    /** A text. */
    public static Cell text(String text) {
        return new Cell(text, OptionalDouble.empty(), Optional.empty(), Tone.PLAIN);
    }

    /** A text, or nothing. */
    public static Cell text(Optional<String> text) {
        return text.map(Cell::text).orElse(EMPTY);
    }

    /** A number; its column prints it. */
    public static Cell number(double value) {
        return new Cell("", OptionalDouble.of(value), Optional.empty(), Tone.PLAIN);
    }

    /** A number printed in a way of its own, as where a column mixes pieces and metres. */
    public static Cell number(double value, String printed) {
        return new Cell(printed, OptionalDouble.of(value), Optional.empty(), Tone.PLAIN);
    }

    /** A number, or nothing. */
    public static Cell number(OptionalDouble value) {
        return value.isPresent() ? number(value.getAsDouble()) : EMPTY;
    }

    /** An insulation colour. */
    public static Cell colour(WireColour colour) {
        return new Cell(colour.text(), OptionalDouble.empty(), Optional.of(colour), Tone.PLAIN);
    }

    /** Nothing. */
    public static Cell empty() {
        return EMPTY;
    }

    /** Something a person has to add, said plainly, as "not chosen". */
    public static Cell missing(String words) {
        return text(words).toned(Tone.ALERT);
    }

    /** This cell in another tone. */
    public Cell toned(Tone changed) {
        return new Cell(text, number, colour, changed);
    }

    /** What a column prints for it. */
    String printed(Column column) {
        return text.isEmpty() && number.isPresent() ? column.print(number.getAsDouble()) : text;
    }

    /** What the file beside the page gets: the full number, or the text. */
    Object filed() {
        return number.isPresent() ? number.getAsDouble() : text;
    }
}
