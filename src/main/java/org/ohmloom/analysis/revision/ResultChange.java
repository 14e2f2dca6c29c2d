package org.ohmloom.analysis.revision;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Quantity;

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

    /** A value as people read it, "unknown" where there is none. */
    public static String text(Optional<Quantity> value) {
        return value.map(each -> Formats.quantity(each.value(), each.unit().dimension()))
                .orElse("unknown");
    }
}
