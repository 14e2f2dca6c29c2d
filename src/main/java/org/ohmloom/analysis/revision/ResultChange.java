package org.ohmloom.analysis.revision;

import java.util.OptionalDouble;
import org.ohmloom.units.Dimension;

/**
 * One computed number that differs.
 *
 * @param subject   id of what it is a number of; empty for the whole harness
 * @param name      what people call the subject, empty when it has no name
 * @param quantity  what the number is, in words
 * @param dimension what it measures; its canonical unit is the unit of both values
 * @param before    value in the old revision; empty when it has none
 * @param after     value in the new revision; empty when it has none
 */
public record ResultChange(
        String subject,
        String name,
        String quantity,
        Dimension dimension,
        OptionalDouble before,
        OptionalDouble after) {

    /**
     * Share of the old value by which it grew, negative when it fell; empty when one is missing, the
     * old one is 0, or it is a temperature, whose zero is only a point on a scale.
     */
    public OptionalDouble growth() {
        return dimension != Dimension.TEMPERATURE
                        && before.isPresent()
                        && after.isPresent()
                        && before.getAsDouble() != 0
                ? OptionalDouble.of((after.getAsDouble() - before.getAsDouble()) / Math.abs(before.getAsDouble()))
                : OptionalDouble.empty();
    }
}
