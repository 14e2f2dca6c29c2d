package org.ohmloom.edit;

import java.math.BigDecimal;
import java.math.MathContext;
import org.ohmloom.units.Unit;

/** Numbers with every digit that tells them apart and none that only comes of changing units. */
final class ExactText {

    private static final MathContext FIFTEEN = new MathContext(15);

    private ExactText() {}

    /** A number in a unit that reads back as the same canonical number: 7 for 0.07 in percent. */
    static String of(double canonical, Unit unit) {
        double value = unit.fromCanonical(canonical);
        BigDecimal exact = BigDecimal.valueOf(value);
        BigDecimal rounded = exact.round(FIFTEEN);
        boolean same = unit.toCanonical(rounded.doubleValue()) == canonical;
        return (same ? rounded : exact).stripTrailingZeros().toPlainString();
    }
}
