package org.ohmloom.draw.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/** Chooses axes: a unit that suits the values, and round numbers in it. */
final class Axes {

    /** Steps people count in, in powers of ten; 2.5 is left out because it needs one digit more. */
    private static final List<Double> ROUND = List.of(1.0, 2.0, 5.0, 10.0);

    /** Steps of minutes and hours. */
    private static final List<Double> SIXTIETHS = List.of(1.0, 2.0, 5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 240.0, 480.0);

    private static final double ROUNDING = 1e-9;

    /** Up to this share of the largest value, the smallest one is near enough to zero for the axis to begin there. */
    private static final double NEAR_ZERO = 0.5;

    private Axes() {}

    /**
     * An axis of equal steps over values.
     *
     * @param least     smallest value, canonical unit
     * @param most      largest value, canonical unit
     * @param mostSteps most steps wanted, 2 or more
     */
    static Axis linear(Dimension dimension, double least, double most, int mostSteps) {
        boolean fromZero = least >= 0 && (startsAtZero(dimension) || least < NEAR_ZERO * most);
        double low = fromZero ? 0 : least;
        double high = most > low ? most : low + Math.max(Math.abs(low) * 0.1, 1e-3);
        Unit unit = unit(dimension, Math.max(Math.abs(low), Math.abs(high)));
        double from = unit.fromCanonical(low);
        double to = unit.fromCanonical(high);
        double step = step(unit, from, to, mostSteps);
        double begin = Math.floor(from / step + ROUNDING) * step;
        int steps = Math.max(1, (int) Math.ceil((to - begin) / step - ROUNDING));
        return stepped(dimension, unit, begin, step, steps);
    }

    /**
     * An axis of equal steps over values in a unit of their own, zero among them.
     *
     * @param heading what is measured, with its unit
     * @param least   smallest value
     * @param most    largest value
     */
    static Axis plain(Text heading, double least, double most, int mostSteps) {
        double low = Math.min(0, least);
        double high = most > 0 || low < 0 ? Math.max(0, most) : 1;
        double step = step(Unit.FRACTION, low, high, mostSteps);
        double begin = Math.floor(low / step + ROUNDING) * step;
        int steps = Math.max(1, (int) Math.ceil((high - begin) / step - ROUNDING));
        List<Tick> ticks = new ArrayList<>();
        for (int k = 0; k <= steps; k++) {
            ticks.add(new Tick(begin + k * step, text(begin + k * step, step)));
        }
        return new Axis(heading, Unit.FRACTION, begin, begin + steps * step, false, ticks);
    }

    /** An axis with as many steps as another, so that one grid serves both. */
    static Axis beside(Axis other, Dimension dimension, double least, double most) {
        for (int wanted = other.steps(); wanted > 0; wanted--) {
            Axis axis = linear(dimension, least, most, wanted);
            if (axis.steps() <= other.steps()) {
                double begin = axis.unit().fromCanonical(axis.from());
                double step = (axis.unit().fromCanonical(axis.to()) - begin) / axis.steps();
                return stepped(dimension, axis.unit(), begin, step, other.steps());
            }
        }
        return linear(dimension, least, most, other.steps());
    }

    private static Axis stepped(Dimension dimension, Unit unit, double begin, double step, int steps) {
        List<Tick> ticks = new ArrayList<>();
        for (int k = 0; k <= steps; k++) {
            double value = begin + k * step;
            ticks.add(new Tick(unit.toCanonical(value), text(value, step)));
        }
        return new Axis(
                title(dimension), unit, unit.toCanonical(begin), unit.toCanonical(begin + steps * step), false, ticks);
    }

    /**
     * An axis of equal ratios over values, with numbers at 1, 2 and 5 or only at powers of ten.
     *
     * @param least   smallest value, canonical unit, above 0
     * @param most    largest value, canonical unit
     * @param between whether 2 and 5 get a number too
     */
    static Axis logarithmic(Dimension dimension, double least, double most, boolean between) {
        double from = between ? lower(least) : Math.pow(10, Math.floor(Math.log10(least) + ROUNDING));
        double to = between ? upper(Math.max(most, from * 2)) : Math.pow(10, Math.ceil(Math.log10(most) - ROUNDING));
        to = to > from ? to : from * 10;
        List<Tick> ticks = new ArrayList<>();
        for (int decade = (int) Math.floor(Math.log10(from) + ROUNDING); ; decade++) {
            for (int digit = 1; digit < 10; digit++) {
                double value = digit * Math.pow(10, decade);
                if (value > to * (1 + ROUNDING)) {
                    return new Axis(title(dimension), dimension.canonicalUnit(), from, to, true, ticks);
                }
                if (value >= from * (1 - ROUNDING)) {
                    boolean numbered = digit == 1 || between && (digit == 2 || digit == 5);
                    ticks.add(new Tick(value, numbered ? text(value, value) : ""));
                }
            }
        }
    }

    private static double lower(double value) {
        double decade = Math.pow(10, Math.floor(Math.log10(value) + ROUNDING));
        double digits = value / decade * (1 + ROUNDING);
        return decade * (digits >= 5 ? 5 : digits >= 2 ? 2 : 1);
    }

    private static double upper(double value) {
        double decade = Math.pow(10, Math.floor(Math.log10(value) + ROUNDING));
        double digits = value / decade * (1 - ROUNDING);
        return decade * (digits <= 1 ? 1 : digits <= 2 ? 2 : digits <= 5 ? 5 : 10);
    }

    private static double step(Unit unit, double from, double to, int mostSteps) {
        double least = (to - from) / mostSteps;
        if (unit == Unit.MINUTE && least > 0.5) {
            for (double step : SIXTIETHS) {
                if (steps(from, to, step) <= mostSteps) {
                    return step;
                }
            }
        }
        double decade = Math.pow(10, Math.floor(Math.log10(least)));
        for (double digit : ROUND) {
            if (steps(from, to, digit * decade) <= mostSteps) {
                return digit * decade;
            }
        }
        return 20 * decade;
    }

    private static double steps(double from, double to, double step) {
        return Math.ceil(to / step - ROUNDING) - Math.floor(from / step + ROUNDING);
    }

    private static String text(double value, double step) {
        int decimals = (int) Math.max(0, -Math.floor(Math.log10(step) + ROUNDING));
        BigDecimal shown = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return shown.signum() == 0 ? "0" : shown.toPlainString();
    }

    private static boolean startsAtZero(Dimension dimension) {
        return dimension != Dimension.VOLTAGE && dimension != Dimension.TEMPERATURE;
    }

    private static Unit unit(Dimension dimension, double largest) {
        return switch (dimension) {
            case VOLTAGE -> largest < 1 ? Unit.MILLIVOLT : Unit.VOLT;
            case CURRENT -> largest < 1 ? Unit.MILLIAMP : largest > 5000 ? Unit.KILOAMP : Unit.AMP;
            case TIME -> largest < 1
                    ? Unit.MILLISECOND
                    : largest <= 300 ? Unit.SECOND : largest <= 4 * 3600 ? Unit.MINUTE : Unit.HOUR;
            case RATIO -> Unit.PERCENT;
            case MASS -> largest < 1 ? Unit.GRAM : Unit.KILOGRAM;
            default -> dimension.canonicalUnit();
        };
    }

    private static Text title(Dimension dimension) {
        return ChartTexts.text(
                "axis." + dimension.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
