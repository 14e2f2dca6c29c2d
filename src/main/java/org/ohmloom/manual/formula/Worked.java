package org.ohmloom.manual.formula;

import java.util.function.DoubleSupplier;

/**
 * A worked example of a formula.
 *
 * @param given   the values
 * @param steps   the arithmetic as a person does it
 * @param byHand  what it comes to by hand, rounded as written in the steps
 * @param unit    unit of the result; empty for a ratio
 * @param program computes the same with the code that computes it for a harness
 */
public record Worked(String given, String steps, double byHand, String unit, DoubleSupplier program) {

    /** How far hand and program may be apart, as a share: what rounding to four digits in every step can make. */
    public static final double ROUNDING = 2e-3;
}
