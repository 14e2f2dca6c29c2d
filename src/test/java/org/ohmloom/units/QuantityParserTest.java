package org.ohmloom.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@Isolated("sets the locale")
class QuantityParserTest {
    private static final double ROUNDING = 1e-12;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "AREA|2.5 mm2|2.5",
                "AREA|2,5 mm²|2.5",
                "AREA|2.5mm^2|2.5",
                "AREA|2.5 sq mm|2.5",
                "AREA|1 kcmil|0.506707479097497",
                "AREA|4110 cmil|2.08256773909071",
                "LENGTH|10 ft|3.048",
                "LENGTH|12 in|0.3048",
                "LENGTH|12\"|0.3048",
                "LENGTH|5'|1.524",
                "LENGTH|64.1 mil|0.00162814",
                "LENGTH|350 mm|0.35",
                "LENGTH|3 Metres|3",
                "LENGTH|3 FT|0.9144",
                "RESISTANCE|4,7 kOhm|4700",
                "RESISTANCE|4.7 k|4700",
                "RESISTANCE|4.7 K|4700",
                "RESISTANCE|10 mohm|0.01",
                "RESISTANCE|10 MOhm|10000000",
                "RESISTANCE|10 mΩ|0.01",
                "RESISTANCE|5 R|5",
                "RESISTANCE|5 ohm|5",
                "RESISTANCE|250 uOhm|0.00025",
                "CURRENT|1.2e-3 A|0.0012",
                "CURRENT|-.5 A|-0.5",
                "CURRENT|+2 amps|2",
                "RATIO|20 %|0.2",
                "RATIO|7 %|0.07",
                "RATIO|0.2|0.2",
                "TEMPERATURE|85 degC|85",
                "TEMPERATURE|85 deg C|85",
                "TEMPERATURE|221 °F|105",
                "TEMPERATURE|221 F|105",
                "TEMPERATURE|293.15 K|20",
                "CAPACITANCE|100 nF|0.0000001",
                "CAPACITANCE|1 F|1",
                "INDUCTANCE|10 mH|0.01",
                "TIME|2 min|120",
                "TIME|1.5 h|5400",
                "FREQUENCY|100 hz|100",
                "MASS|2 lb|0.90718474",
                "CHARGE|95 Ah|95",
                "POWER|1,5 kW|1500",
                "ENERGY|1 Wh|3600",
                "DATA_RATE|500 kbit/s|500000",
                "RESISTANCE_PER_LENGTH|8.3 Ohm/km|0.0083",
                "RESISTANCE_PER_LENGTH|1 Ohm/1000ft|0.00328083989501312",
                "MASS_PER_LENGTH|25 kg/km|0.025",
                "JOULE_INTEGRAL|1200 A2s|1200",
            },
            quoteCharacter = '~')
    void readsWhatABuilderWrites(Dimension expected, String typed, double canonical) {
        double read = QuantityParser.parse(typed, expected).canonical();
        assertEquals(canonical, read, ROUNDING * Math.abs(canonical));
    }

    @Test
    void everyKindOfSpaceAndSignIsRead() {
        assertEquals(
                -2.5,
                QuantityParser.parse("  \u22122.5\u00a0V\t", Dimension.VOLTAGE).value());
        assertEquals(
                2.5,
                QuantityParser.parse("2.5\u202f\u2126", Dimension.RESISTANCE).canonical());
        assertEquals(
                2.5e-6, QuantityParser.parse("2.5 \u03bcA", Dimension.CURRENT).canonical(), 1e-18);
        assertEquals(
                2.5e-6, QuantityParser.parse("2.5 \u00b5A", Dimension.CURRENT).canonical(), 1e-18);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "LENGTH|3 kg|'3 kg' is a mass; a length such as '1.5 m' is needed",
                "AREA|3 m|'3 m' is a length; an area such as '2.5 mm2' is needed",
                "LENGTH|10 M|'10 M' is a resistance; a length such as '1.5 m' is needed",
                "LENGTH|3|'3' has no unit; a length such as '1.5 m' is needed",
                "LENGTH|3 furlong|'3 furlong' has the unknown unit 'furlong'; a length such as '1.5 m' is needed",
                "CURRENT|5 MA|'5 MA' has the unknown unit 'MA'; a current such as '2.5 A' is needed",
                "LENGTH|NaN|'NaN' does not begin with a number; a length such as '1.5 m' is needed",
                "LENGTH|Infinity m|'Infinity m' does not begin with a number; a length such as '1.5 m' is needed",
                "LENGTH|1e999 m|'1e999 m' is too large to compute with; a length such as '1.5 m' is needed",
                "LENGTH|1e58 km|'1e58 km' is too large to compute with; a length such as '1.5 m' is needed",
                "LENGTH|1e-58 mm|'1e-58 mm' is too small to compute with; a length such as '1.5 m' is needed",
                "LENGTH|1e308 km|'1e308 km' is too large to compute with; a length such as '1.5 m' is needed",
                "LENGTH|1e-999 m|'1e-999 m' is too small to compute with; a length such as '1.5 m' is needed",
                "POWER|1,234 W|'1,234 W' may mean 1234 or 1.234; write the one that is meant",
            },
            quoteCharacter = '~')
    void refusesWithOneLineThatSaysWhatWouldBeRight(Dimension expected, String typed, String message) {
        assertEquals(message, refusal(typed, expected));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,234.5 W", "1.234,5 W", "1.2.3 W", "1 234 W", "1,2,3 W", "1. W", "1\u202f234,5 W"})
    void refusesThousandsSeparators(String typed) {
        String message = refusal(typed, Dimension.POWER);
        assertTrue(message.contains("one decimal point or comma"), message);
    }

    @Test
    void aCommaBeforeThreeDigitsIsReadWhereItCannotSeparateThousands() {
        assertEquals(0.125, QuantityParser.parse("0,125 m", Dimension.LENGTH).value());
        assertEquals(
                1234.567, QuantityParser.parse("1234,567 m", Dimension.LENGTH).value());
        assertEquals(1.234, QuantityParser.parse("1.234 m", Dimension.LENGTH).value());
    }

    @Test
    void aMessageStaysOnOneShortLine() {
        String message = refusal("what\nis " + "x".repeat(500), Dimension.MASS);
        assertFalse(message.contains("\n"), message);
        assertTrue(message.length() < 120, message);
        assertEquals("nothing was entered; a mass such as '0.4 kg' is needed", refusal(" \t", Dimension.MASS));
    }

    @Test
    void aMissingUnitIsTheOneTheCallerAssumes() {
        assertEquals(Quantity.of(350, Unit.MILLIMETRE), QuantityParser.parse("350", Unit.MILLIMETRE));
        assertEquals(Quantity.of(2, Unit.FOOT), QuantityParser.parse("2 ft", Unit.MILLIMETRE));
        assertEquals(
                0.2, QuantityParser.parse("20", Dimension.RATIO, Unit.PERCENT).canonical());
        assertThrows(IllegalArgumentException.class, () -> QuantityParser.parse("20", Dimension.TIME, Unit.PERCENT));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "tr"})
    void theDefaultLocaleChangesNothing(String language) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(new Locale(language));
            assertEquals(120, QuantityParser.parse("2 MINUTES", Dimension.TIME).canonical());
            assertEquals(0.0508, QuantityParser.parse("2 IN", Dimension.LENGTH).canonical());
            assertEquals(2.5, QuantityParser.parse("2,5 V", Dimension.VOLTAGE).canonical());
            assertEquals("2.5 V", Quantity.of(2.5, Unit.VOLT).text());
            assertEquals("12.6 V", Formats.volts(12.6));
            assertEquals("2.5 mm2", Gauge.parse("2,5 mm2").text());
            assertEquals("14 AWG", Gauge.parse("14 awg").text());
            String message = assertThrows(IllegalArgumentException.class, () -> Require.positive(-1.5, "length in m"))
                    .getMessage();
            assertEquals("length in m must be greater than 0, was -1.5", message);
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @EnumSource
    void theExampleInMessagesIsItselfAccepted(Dimension dimension) {
        assertEquals(
                dimension, QuantityParser.parse(dimension.example(), dimension).dimension());
    }

    private static String refusal(String typed, Dimension expected) {
        return assertThrows(QuantityFormatException.class, () -> QuantityParser.parse(typed, expected))
                .getMessage();
    }
}
