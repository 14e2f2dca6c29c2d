package org.ohmloom.workbench.sheet;

import java.util.Objects;
import java.util.OptionalDouble;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.widget.Tone;

/**
 * What stands in one cell of a list.
 *
 * @param text   as it is shown, without the unit of the column
 * @param exact  as it is copied, with every digit
 * @param number the value to sort by; empty for a text
 * @param tone   how it stands out
 * @param tip    what there is to know about it; may be empty
 */
public record CellText(String text, String exact, OptionalDouble number, Tone tone, String tip)
        implements Comparable<CellText> {

    /** Nothing. */
    public static final CellText EMPTY = of("");

    /** A text. */
    public static CellText of(String text) {
        return new CellText(text, text, OptionalDouble.empty(), Tone.PLAIN, "");
    }

    /** A number in the unit of its column, three significant digits. */
    public static CellText of(double value) {
        return new CellText(Formats.cell(value), Double.toString(value), OptionalDouble.of(value), Tone.PLAIN, "");
    }

    /** A number, or nothing. */
    public static CellText of(OptionalDouble value) {
        return value.isPresent() ? of(value.getAsDouble()) : EMPTY;
    }

    /** A text that sorts by a number. */
    public static CellText of(String text, double order) {
        return new CellText(text, text, OptionalDouble.of(order), Tone.PLAIN, "");
    }

    /** Whether it shows nothing but its number. */
    boolean isNumber() {
        return number.isPresent() && exact.equals(Double.toString(number.getAsDouble()));
    }

    public CellText in(Tone changed) {
        return new CellText(text, exact, number, changed, tip);
    }

    public CellText saying(String changed) {
        return new CellText(text, exact, number, tone, changed);
    }

    /** Numbers by value, texts in natural order, empty cells last. */
    @Override
    public int compareTo(CellText other) {
        if (number.isPresent() && other.number.isPresent()) {
            return Double.compare(number.getAsDouble(), other.number.getAsDouble());
        }
        if (text.isEmpty() || other.text.isEmpty()) {
            return Boolean.compare(text.isEmpty(), other.text.isEmpty());
        }
        int byText = NaturalOrder.INSTANCE.compare(text, other.text);
        return byText != 0 ? byText : Objects.compare(exact, other.exact, String::compareTo);
    }

    /** The text as shown; filters look at it. */
    @Override
    public String toString() {
        return text;
    }
}
