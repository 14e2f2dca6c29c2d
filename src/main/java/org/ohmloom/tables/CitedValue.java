package org.ohmloom.tables;

import org.ohmloom.units.Require;

/**
 * A number from a table and where it comes from.
 *
 * @param value    the number, in the unit that the method returning it names
 * @param citation its origin
 */
public record CitedValue(double value, Citation citation) {
    /** Refuses a number that is not finite. */
    public CitedValue {
        Require.finite(value, "a table value");
    }
}
