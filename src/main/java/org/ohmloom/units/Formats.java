package org.ohmloom.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * Values as people read them: three significant digits, a fitting prefix, a decimal point, no exponent within reason.
 *
 * <ul>
 *   <li>12.6 V, 35 mV, 4.7 mΩ, 0 A; trailing zeros are dropped, whole digits are all kept (1235 kW, 12345 mm), but for
 *       more than fifteen, which nobody reads: 1e305 kW.
 *   <li>At most three decimals, for temperatures one. A smaller value that is not zero shows its bound, "&lt;0.001 µV" or
 *       for negative ones "&gt;-0.001 µV"; a millionth of that bound and less is rounding noise of a computation and
 *       shows as zero, in the canonical unit. A temperature has no such bound: its zero is only a point on a scale.
 *   <li>Zero never has a sign.
 *   <li>NaN shows as "unknown", the infinities, or what a unit makes one, as "infinite" and "-infinite". These methods never throw.
 * </ul>
 */
public final class Formats {
    private static final int DIGITS = 3;
    private static final int MOST_DECIMALS = 3;
    private static final int MOST_WHOLE_DIGITS = 15;
    private static final int TEMPERATURE_DECIMALS = 1;
    private static final double NOISE = 1e-6;

    private Formats() {}

    /** A voltage in V, as "12.6 V" or "35 mV". */
    public static String volts(double volts) {
        return quantity(volts, Dimension.VOLTAGE);
    }

    /** A current in A, as "2.5 A" or "12 mA". */
    public static String amps(double amps) {
        return quantity(amps, Dimension.CURRENT);
    }

    /** A resistance in ohm, as "4.7 mΩ" or "1.2 kΩ". */
    public static String ohms(double ohms) {
        return quantity(ohms, Dimension.RESISTANCE);
    }

    /** A power in W, as "55 W". */
    public static String watts(double watts) {
        return quantity(watts, Dimension.POWER);
    }

    /** A length in m, as "1.25 m" or "350 mm". */
    public static String metres(double metres) {
        return quantity(metres, Dimension.LENGTH);
    }

    /** A length or diameter given and shown in mm, as "1.63 mm" or "2350 mm". */
    public static String millimetres(double millimetres) {
        return in(millimetres, Unit.MILLIMETRE);
    }

    /** A cross-section in mm2, as "2.08 mm²". */
    public static String squareMillimetres(double areaMm2) {
        return quantity(areaMm2, Dimension.AREA);
    }

    /** A mass in kg, as "1.4 kg" or "35 g". */
    public static String kilograms(double kilograms) {
        return quantity(kilograms, Dimension.MASS);
    }

    /** A temperature in degrees Celsius, as "67.3 °C". */
    public static String celsius(double celsius) {
        return quantity(celsius, Dimension.TEMPERATURE);
    }

    /** A time in s, as "0.5 s" is written: "500 ms". */
    public static String seconds(double seconds) {
        return quantity(seconds, Dimension.TIME);
    }

    /** A frequency in Hz, as "100 Hz". */
    public static String hertz(double hertz) {
        return quantity(hertz, Dimension.FREQUENCY);
    }

    /** A fraction of one, shown in percent: 0.03 as "3 %". */
    public static String percent(double fraction) {
        return quantity(fraction, Dimension.RATIO);
    }

    /** A plain number of no unit, by the rules of this class: "1.25". */
    public static String number(double value) {
        return in(value, Unit.FRACTION);
    }

    /**
     * A plain number in a column whose head states the unit. A small negative one is rounded to one digit, as "-0.0004": beside
     * other numbers a bound as ">-0.001" reads as its opposite.
     */
    public static String cell(double value) {
        return number(value).startsWith(">") ? withoutZeros(NumberText.round(value, 1)) : number(value);
    }

    /** A value in the canonical unit of a dimension, shown with the prefix that fits it. */
    public static String quantity(double canonical, Dimension dimension) {
        if (!Double.isFinite(canonical)) {
            return notFinite(canonical);
        }
        List<DisplayStep> ladder = DisplayStep.ladder(dimension);
        for (DisplayStep step : ladder.subList(0, ladder.size() - 1)) {
            double value = step.unit().fromCanonical(canonical);
            if (rounded(value).abs().doubleValue() >= step.from()) {
                return in(value, step.unit());
            }
        }
        Unit smallest = ladder.get(ladder.size() - 1).unit();
        double value = smallest.fromCanonical(canonical);
        String shown = in(value, smallest);
        return shown.equals(withSymbol("0", smallest)) ? withSymbol("0", zeroUnit(dimension)) : shown;
    }

    /** A value shown in the very unit it is given in, for columns that state one unit. */
    public static String in(double value, Unit unit) {
        return Double.isFinite(value) ? withSymbol(digits(value, unit), unit) : notFinite(value);
    }

    private static String digits(double value, Unit unit) {
        boolean temperature = unit.dimension() == Dimension.TEMPERATURE;
        int decimals = temperature ? TEMPERATURE_DECIMALS : MOST_DECIMALS;
        BigDecimal shown = rounded(value);
        if (shown.precision() - shown.scale() > MOST_WHOLE_DIGITS) {
            return NumberText.significant(value, DIGITS);
        }
        if (shown.scale() > decimals) {
            shown = NumberText.cleaned(value).setScale(decimals, RoundingMode.HALF_UP);
        }
        if (shown.signum() != 0) {
            return withoutZeros(shown);
        }
        BigDecimal bound = BigDecimal.ONE.movePointLeft(decimals);
        if (temperature || Math.abs(value) <= NOISE * bound.doubleValue()) {
            return "0";
        }
        return value > 0 ? "<" + bound.toPlainString() : ">-" + bound.toPlainString();
    }

    private static String withoutZeros(BigDecimal shown) {
        return shown.stripTrailingZeros().toPlainString();
    }

    private static BigDecimal rounded(double value) {
        return NumberText.round(value, DIGITS);
    }

    private static Unit zeroUnit(Dimension dimension) {
        return dimension == Dimension.RATIO ? Unit.PERCENT : dimension.canonicalUnit();
    }

    private static String notFinite(double value) {
        return Double.isNaN(value) ? "unknown" : value > 0 ? "infinite" : "-infinite";
    }

    private static String withSymbol(String digits, Unit unit) {
        return unit.symbol().isEmpty() ? digits : digits + " " + unit.symbol();
    }
}
