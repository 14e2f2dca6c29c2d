package org.ohmloom.workbench.settings;

import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.ohmloom.units.ShownUnits;

/**
 * The units and the decimal sign a person wants to read and type in.
 *
 * @param sizes        how conductor sizes are shown
 * @param lengths      how lengths are shown
 * @param temperatures how temperatures are shown
 * @param decimals     the decimal sign
 */
public record UnitChoice(
        ShownUnits.Sizes sizes, ShownUnits.Lengths lengths, ShownUnits.Temperatures temperatures, Decimals decimals) {

    /** The decimal sign: one of the two, or as the system writes numbers. */
    public enum Decimals {
        POINT,
        COMMA,
        SYSTEM
    }

    /** As the harness is written. */
    public static final UnitChoice DEFAULT = new UnitChoice(
            ShownUnits.Sizes.AS_NAMED, ShownUnits.Lengths.METRIC, ShownUnits.Temperatures.CELSIUS, Decimals.POINT);

    public UnitChoice withSizes(ShownUnits.Sizes changed) {
        return new UnitChoice(changed, lengths, temperatures, decimals);
    }

    public UnitChoice withLengths(ShownUnits.Lengths changed) {
        return new UnitChoice(sizes, changed, temperatures, decimals);
    }

    public UnitChoice withTemperatures(ShownUnits.Temperatures changed) {
        return new UnitChoice(sizes, lengths, changed, decimals);
    }

    public UnitChoice withDecimals(Decimals changed) {
        return new UnitChoice(sizes, lengths, temperatures, changed);
    }

    /** What is shown by this choice, where the system writes numbers as it does now. */
    public ShownUnits shown() {
        return shown(Locale.getDefault(Locale.Category.FORMAT));
    }

    /** What is shown by this choice on a system with this locale of numbers. */
    ShownUnits shown(Locale system) {
        boolean comma = decimals == Decimals.COMMA
                || (decimals == Decimals.SYSTEM
                        && DecimalFormatSymbols.getInstance(system).getDecimalSeparator() == ',');
        return new ShownUnits(
                sizes, lengths, temperatures, comma ? ShownUnits.Decimals.COMMA : ShownUnits.Decimals.POINT);
    }
}
