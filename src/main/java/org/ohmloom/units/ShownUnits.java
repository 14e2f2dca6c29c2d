package org.ohmloom.units;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * In which units and with which decimal sign a person reads and types. The harness itself stays in canonical units.
 *
 * <p>Inch and foot are exact by definition (25.4 mm, 12 inches), and degF = degC x 9 / 5 + 32. An American wire gauge has the
 * nominal area of ASTM B258 ({@link Gauge#nominalAreaMm2()}). A size of the other system is never renamed into one that does
 * not exist: it is shown by the row of that table whose area is nearest, or by its own nominal area, marked with
 * {@value #NEARLY}.
 *
 * @param sizes        how conductor sizes are shown
 * @param lengths      how lengths are shown
 * @param temperatures how temperatures are shown
 * @param decimals     the decimal sign
 */
public record ShownUnits(Sizes sizes, Lengths lengths, Temperatures temperatures, Decimals decimals) {

    /** Stands before a size that is only the nearest one in the system asked for. */
    public static final String NEARLY = "≈";

    /** As the harness is written: sizes by their own name, metres, degrees Celsius, a decimal point. */
    public static final ShownUnits USUAL =
            new ShownUnits(Sizes.AS_NAMED, Lengths.METRIC, Temperatures.CELSIUS, Decimals.POINT);

    private static final List<Unit> CONVERTED = List.of(Unit.METRE, Unit.MILLIMETRE, Unit.DEGREE_CELSIUS);
    /** Areas of neighbouring gauges stand as 92^(2/39) to 1. */
    private static final double HALF_A_STEP = Math.pow(92, 1 / 39.0);

    /** How conductor sizes are shown. */
    public enum Sizes {
        /** Each by its own name. */
        AS_NAMED,
        /** In mm2; an American gauge by its nominal area. */
        METRIC,
        /** In AWG; a metric size by the nearest gauge. */
        AWG
    }

    /** How lengths are shown. */
    public enum Lengths {
        /** Metres and millimetres. */
        METRIC,
        /** Feet and inches. */
        FEET
    }

    /** How temperatures are shown. */
    public enum Temperatures {
        CELSIUS,
        FAHRENHEIT
    }

    /** The decimal sign. */
    public enum Decimals {
        POINT,
        COMMA
    }

    /** The unit in which values of a column or field in this unit are shown. */
    public Unit of(Unit unit) {
        if (lengths == Lengths.FEET && unit == Unit.METRE) {
            return Unit.FOOT;
        }
        if (lengths == Lengths.FEET && unit == Unit.MILLIMETRE) {
            return Unit.INCH;
        }
        return temperatures == Temperatures.FAHRENHEIT && unit == Unit.DEGREE_CELSIUS ? Unit.DEGREE_FAHRENHEIT : unit;
    }

    /** The unit with this symbol that may be shown in another one; empty for every other text. */
    public static Optional<Unit> convertible(String symbol) {
        return CONVERTED.stream().filter(unit -> unit.symbol().equals(symbol)).findFirst();
    }

    /** A plain number, three significant digits: "1,25". */
    public String number(double value) {
        return signed(Formats.number(value));
    }

    /** A value given in a unit, shown in the unit that stands for it: 1.5 in metres as "4.92 ft". */
    public String in(double value, Unit unit) {
        return signed(Formats.in(converted(value, unit), of(unit)));
    }

    /** The number of {@link #in} without its unit. */
    public String digits(double value, Unit unit) {
        String text = in(value, unit);
        String symbol = " " + of(unit).symbol();
        return text.endsWith(symbol) ? text.substring(0, text.length() - symbol.length()) : text;
    }

    /** A value given in a unit, in the unit that stands for it. */
    public double converted(double value, Unit unit) {
        return of(unit) == unit ? value : of(unit).fromCanonical(unit.toCanonical(value));
    }

    /** A value in the canonical unit of a dimension, with the prefix or the smaller unit that fits it. */
    public String quantity(double canonical, Dimension dimension) {
        if (dimension == Dimension.LENGTH && lengths == Lengths.FEET) {
            double feet = Unit.FOOT.fromCanonical(canonical);
            boolean small = Math.abs(feet) < 1 && canonical != 0;
            return signed(
                    small ? Formats.in(Unit.INCH.fromCanonical(canonical), Unit.INCH) : Formats.in(feet, Unit.FOOT));
        }
        return dimension == Dimension.TEMPERATURE
                ? in(canonical, Unit.DEGREE_CELSIUS)
                : signed(Formats.quantity(canonical, dimension));
    }

    /** A length in m. */
    public String metres(double metres) {
        return quantity(metres, Dimension.LENGTH);
    }

    /** A length given in mm, shown in mm or inches whatever its size. */
    public String millimetres(double millimetres) {
        return in(millimetres, Unit.MILLIMETRE);
    }

    /** A temperature in degrees Celsius. */
    public String celsius(double celsius) {
        return in(celsius, Unit.DEGREE_CELSIUS);
    }

    /** A conductor size: "2.5 mm²", "14 AWG", "≈13 AWG". */
    public String size(Gauge gauge) {
        if (sizes == Sizes.AWG && gauge.system() == GaugeSystem.METRIC) {
            return nearestAwg(gauge).map(found -> NEARLY + found.text()).orElseGet(() -> name(gauge));
        }
        return sizes == Sizes.METRIC && gauge.system() == GaugeSystem.AWG
                ? NEARLY + signed(Formats.squareMillimetres(gauge.nominalAreaMm2()))
                : name(gauge);
    }

    /** The label of a size itself, never another one: what is typed again to get it. */
    public String name(Gauge gauge) {
        return signed(gauge.text().replace("mm2", Unit.SQUARE_MILLIMETRE.symbol()));
    }

    /** The American gauge whose area is nearest by ratio, if it is less than half a step of the gauge away. */
    static Optional<Gauge> nearestAwg(Gauge metric) {
        double areaMm2 = metric.nominalAreaMm2();
        Gauge nearest = Gauge.awg(Gauge.THICKEST_AWG);
        for (int number = Gauge.THICKEST_AWG; number <= Gauge.THINNEST_AWG; number++) {
            Gauge each = Gauge.awg(number);
            if (apart(each, areaMm2) < apart(nearest, areaMm2)) {
                nearest = each;
            }
        }
        return Optional.of(nearest).filter(found -> apart(found, areaMm2) <= Math.log(HALF_A_STEP));
    }

    private static double apart(Gauge gauge, double areaMm2) {
        return Math.abs(Math.log(gauge.nominalAreaMm2() / areaMm2));
    }

    /**
     * A value given in a unit, with every digit: what is typed again to get exactly this value. Without its unit, unless no number
     * of the unit shown leads back to it; then it is the value in its own unit.
     */
    public String exact(double value, Unit unit) {
        Optional<String> digits =
                of(unit) == unit ? Optional.empty() : ShownDigits.of(unit.toCanonical(value), of(unit));
        return signed(digits.orElseGet(() -> NumberText.exact(value) + (of(unit) == unit ? "" : " " + unit.symbol())));
    }

    /** A quantity that was written to be typed again, as "1.5 m", in the unit shown; any other text as it is. */
    public String start(String text, Unit unit) {
        if (text.isBlank() || of(unit) == unit) {
            return signed(text);
        }
        try {
            double canonical = QuantityParser.parse(text, unit).canonical();
            return signed(ShownDigits.of(canonical, of(unit))
                    .map(digits -> digits + " " + of(unit).symbol())
                    .orElse(text));
        } catch (QuantityFormatException other) {
            return text;
        }
    }

    /** What a person typed for a quantity in a unit, as {@link QuantityParser} takes it: a bare number in the unit shown. */
    public String typed(String text, Unit unit) {
        String plain = pointed(text);
        return of(unit) != unit && ShownDigits.isBare(plain) ? plain.strip() + " " + of(unit).symbol() : plain;
    }

    /** What a person typed for a conductor size: a bare number is AWG where sizes are shown so, otherwise mm2. */
    public String typedSize(String text) {
        String plain = pointed(text).strip();
        if (plain.startsWith(NEARLY)) {
            throw new QuantityFormatException(
                    "%s is only near a size; write the size meant, as 2.5 mm² or 14 AWG", Texts.quoted(text));
        }
        return sizes == Sizes.AWG && ShownDigits.isBare(plain) ? plain + " AWG" : plain;
    }

    /** Text with decimal commas as decimal points, where the comma is the sign in use. */
    public String pointed(String text) {
        return decimals == Decimals.COMMA ? text.replaceAll("(?<=[0-9]),(?=[0-9])", ".") : text;
    }

    /** Digits with the decimal sign in use. */
    public String signed(String digits) {
        return decimals == Decimals.COMMA ? digits.replaceAll("(?<=[0-9])\\.(?=[0-9])", ",") : digits;
    }

    /** A sentence the program wrote: each quantity in it in the units shown, computed from the digits that stand there. */
    public String text(String sentence) {
        return new ShownSentence(this, false).of(sentence);
    }

    /** As {@link #text(String)}, with quantities that stand in it computed from their exact values. */
    public String text(String sentence, Collection<Quantity> exactly) {
        return new ShownSentence(this, false).of(sentence, exactly);
    }

    /** A short text the program wrote whose mm² are conductor sizes. */
    public String label(String text) {
        return new ShownSentence(this, true).of(text);
    }
}
