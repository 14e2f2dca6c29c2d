package org.ohmloom.analysis.revision;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Quantity;
import org.ohmloom.words.Text;

/**
 * One computed number that differs.
 *
 * @param subject  id of what it is a number of; empty for the whole harness
 * @param name     what people call the subject, empty when it has no name
 * @param quantity what the number is, in words
 * @param before   value in the old revision, in the canonical unit of its dimension; empty when it has none
 * @param after    value in the new revision, in the same unit; empty when it has none
 */
public record ResultChange(
        String subject, String name, String quantity, Optional<Quantity> before, Optional<Quantity> after) {

    private static final double KELVINS_OF_A_WHOLE = 100;

    /**
     * Share of the old value by which it grew, negative when it fell; empty when one is missing, the old one is 0, or it
     * is a temperature, whose zero is only a point on a scale.
     */
    public OptionalDouble growthFraction() {
        if (before.isEmpty() || after.isEmpty()) {
            return OptionalDouble.empty();
        }
        Quantity old = before.get();
        return old.value() == 0 || old.unit().dimension() == Dimension.TEMPERATURE
                ? OptionalDouble.empty()
                : OptionalDouble.of((after.get().value() - old.value()) / Math.abs(old.value()));
    }

    /** By how much the number grew, in its canonical unit (a temperature in K); empty when one is missing. */
    public OptionalDouble difference() {
        return before.isEmpty() || after.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(after.get().value() - before.get().value());
    }

    /** The difference of a change as people read it, with its sign; empty when one value is missing. */
    public static String difference(ResultChange change) {
        if (change.difference().isEmpty()) {
            return "";
        }
        double grown = change.difference().getAsDouble();
        Dimension dimension = change.after().orElseThrow().unit().dimension();
        String size = dimension == Dimension.TEMPERATURE
                ? Formats.number(Math.abs(grown)) + " K"
                : Formats.quantity(Math.abs(grown), dimension);
        return (grown < 0 ? "-" : "+") + size;
    }

    /**
     * Size of the change, by which unlike numbers can be put in order: the difference as a share of the larger of both
     * values; of temperatures the difference as a share of 100 K (our choice); 1 where one of both is missing.
     */
    public double sizeFraction() {
        if (before.isEmpty() || after.isEmpty()) {
            return 1;
        }
        double old = before.get().value();
        double now = after.get().value();
        if (before.get().unit().dimension() == Dimension.TEMPERATURE) {
            return Math.abs(now - old) / KELVINS_OF_A_WHOLE;
        }
        double larger = Math.max(Math.abs(old), Math.abs(now));
        return larger == 0 ? 0 : Math.abs(now - old) / larger;
    }

    /** What the number is in any language. */
    public Text quantityText() {
        return RevisionWords.text(quantity);
    }

    /** A value as people read it, in English, "unknown" where there is none. */
    public static String text(Optional<Quantity> value) {
        return said(value).english();
    }

    /** A value as people read it in any language. */
    public static Text said(Optional<Quantity> value) {
        return value.map(each ->
                        Text.of(Formats.quantity(each.value(), each.unit().dimension())))
                .orElseGet(() -> RevisionWords.text("unknown"));
    }
}
