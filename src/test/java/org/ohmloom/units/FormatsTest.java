package org.ohmloom.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FormatsTest {
    /** Half a unit of the third digit, at worst on 1.00; the text is read back, so a little more for rounding. */
    private static final double THREE_DIGITS = 5.000001e-3;

    @ParameterizedTest
    @CsvSource({
        "VOLTAGE, 12.6, 12.6 V",
        "VOLTAGE, 0.035, 35 mV",
        "VOLTAGE, 0.9996, 1 V",
        "VOLTAGE, 12.345, 12.3 V",
        "VOLTAGE, 0.0000012, 1.2 µV",
        "VOLTAGE, -0.42, -420 mV",
        "VOLTAGE, 0.0000000001, <0.001 µV",
        "VOLTAGE, -0.0000000001, >-0.001 µV",
        "VOLTAGE, 1e-16, 0 V",
        "CURRENT, 0, 0 A",
        "CURRENT, -0.0, 0 A",
        "CURRENT, 2400, 2.4 kA",
        "RESISTANCE, 0.0047, 4.7 mΩ",
        "RESISTANCE, 4700, 4.7 kΩ",
        "RESISTANCE, 10e6, 10 MΩ",
        "RESISTANCE_PER_LENGTH, 0.0000464824, 0.046 mΩ/m",
        "RESISTANCE_PER_LENGTH, 0.00829, 8.29 mΩ/m",
        "POWER, 1234567, 1235 kW",
        "LENGTH, 0.35, 350 mm",
        "LENGTH, 3.048, 3.05 m",
        "LENGTH, 1234.5, 1235 m",
        "AREA, 2.0809, 2.08 mm²",
        "AREA, 0.0509, 0.051 mm²",
        "MASS, 0.0354, 35.4 g",
        "TEMPERATURE, 67.34, 67.3 °C",
        "TEMPERATURE, 105, 105 °C",
        "TEMPERATURE, -0.04, 0 °C",
        "TEMPERATURE, -40, -40 °C",
        "TIME, 0.5, 500 ms",
        "TIME, 90, 90 s",
        "TIME, 1800, 30 min",
        "TIME, 9000, 2.5 h",
        "FREQUENCY, 0.5, 0.5 Hz",
        "FREQUENCY, 25000, 25 kHz",
        "CAPACITANCE, 1e-7, 100 nF",
        "INDUCTANCE, 0.01, 10 mH",
        "CHARGE, 95, 95 Ah",
        "DATA_RATE, 500000, 500 kbit/s",
        "RATIO, 0.03, 3 %",
        "RATIO, 0, 0 %",
        "RATIO, 0.03254, 3.25 %",
        "RATIO, 0.000001, <0.001 %",
        "JOULE_INTEGRAL, 12000, 12000 A²s",
    })
    void showsThreeDigitsWithTheFittingPrefix(Dimension dimension, double canonical, String text) {
        assertEquals(text, Formats.quantity(canonical, dimension));
    }

    @Test
    void namedMethodsUseTheirOwnUnit() {
        assertEquals("12.6 V", Formats.volts(12.6));
        assertEquals("2.5 A", Formats.amps(2.5));
        assertEquals("4.7 mΩ", Formats.ohms(0.0047));
        assertEquals("55 W", Formats.watts(55));
        assertEquals("1.25 m", Formats.metres(1.25));
        assertEquals("1.63 mm", Formats.millimetres(1.6277));
        assertEquals("12345 mm", Formats.millimetres(12345.2));
        assertEquals("2.08 mm²", Formats.squareMillimetres(2.0809));
        assertEquals("35.4 g", Formats.kilograms(0.0354));
        assertEquals("67.3 °C", Formats.celsius(67.34));
        assertEquals("500 ms", Formats.seconds(0.5));
        assertEquals("100 Hz", Formats.hertz(100));
        assertEquals("3 %", Formats.percent(0.03));
        assertEquals("1.25", Formats.number(1.2549));
        assertEquals("0.35 m", Formats.in(0.35, Unit.METRE));
    }

    @ParameterizedTest
    @CsvSource({
        "1e308, 1e305 kW",
        "-1.23456e30, -1.23e27 kW",
        "9.99999e17, 999999000000000 kW",
        "1e18, 1e15 kW",
        "1.7976931348623157e308, 1.8e305 kW"
    })
    void whatHasMoreDigitsThanAnybodyReadsHasAnExponent(double watts, String text) {
        assertEquals(text, Formats.watts(watts));
    }

    @ParameterizedTest
    @CsvSource({"-0.00042, -0.0004", "-0.0012, -0.001", "0.0004, <0.001", "-1e-10, 0", "-12.345, -12.3", "0, 0"})
    void aNumberInAColumnThatIsSmallAndNegativeIsRounded(double value, String text) {
        assertEquals(text, Formats.cell(value));
    }

    @ParameterizedTest
    @EnumSource
    void whatIsNotANumberIsSaidInWords(Dimension dimension) {
        assertEquals("unknown", Formats.quantity(Double.NaN, dimension));
        assertEquals("infinite", Formats.quantity(Double.POSITIVE_INFINITY, dimension));
        assertEquals("-infinite", Formats.in(Double.NEGATIVE_INFINITY, dimension.canonicalUnit()));
    }

    @Property(shrinking = ShrinkingMode.OFF)
    void whatIsShownIsCloseToTheValueAndHasNoExponent(
            @ForAll @DoubleRange(min = 1, max = 10) @Scale(9) double mantissa,
            @ForAll @IntRange(min = -5, max = 8) int exponent,
            @ForAll boolean negative,
            @ForAll Dimension dimension) {
        double value = (negative ? -1 : 1) * mantissa * Math.pow(10, exponent);
        String text = Formats.quantity(value, dimension);
        assertFalse(text.matches(".*[0-9]e.*"), text);
        if (!text.startsWith("<") && !text.startsWith(">")) {
            double shown = QuantityParser.parse(text, dimension).canonical();
            // three decimals of the smallest step, or one of a temperature, can be coarser than three digits
            double lastDecimal = dimension == Dimension.TEMPERATURE ? 0.1 : smallestStep(dimension) / 1000;
            assertEquals(value, shown, Math.max(Math.abs(value) * THREE_DIGITS, lastDecimal / 2 * 1.000001), text);
        }
    }

    @Property(shrinking = ShrinkingMode.OFF)
    void noValueThrowsOrShowsASignedZero(@ForAll double value, @ForAll Dimension dimension) {
        String text = Formats.quantity(value, dimension);
        assertFalse(text.matches("-0([^.0-9].*)?"), text);
        assertFalse(text.isBlank());
    }

    private static double smallestStep(Dimension dimension) {
        var ladder = DisplayStep.ladder(dimension);
        return ladder.get(ladder.size() - 1).unit().toCanonical(1);
    }
}
