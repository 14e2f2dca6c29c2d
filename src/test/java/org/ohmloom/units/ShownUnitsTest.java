package org.ohmloom.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmloom.units.ShownUnits.Decimals;
import org.ohmloom.units.ShownUnits.Lengths;
import org.ohmloom.units.ShownUnits.Sizes;
import org.ohmloom.units.ShownUnits.Temperatures;

/**
 * What a person reads and types in other units than the harness is written in. Factors: NIST Special Publication 811, edition
 * 2008, B.8: 1 ft = 0.3048 m and 1 in = 25.4 mm, both exact; t/degF = 9/5 t/degC + 32. Gauges: ASTM B258, table awg-geometry.
 */
class ShownUnitsTest {

    private static final ShownUnits AMERICAN =
            new ShownUnits(Sizes.AWG, Lengths.FEET, Temperatures.FAHRENHEIT, Decimals.POINT);
    private static final ShownUnits COMMA =
            new ShownUnits(Sizes.METRIC, Lengths.METRIC, Temperatures.CELSIUS, Decimals.COMMA);

    @Test
    void lengthsComeInFeetAndBelowOneFootInInches() {
        assertEquals("4.92 ft", AMERICAN.metres(1.5), "1.5 / 0.3048 = 4.9213");
        assertEquals("9.84 in", AMERICAN.metres(0.25), "250 / 25.4 = 9.8425");
        assertEquals("1 ft", AMERICAN.metres(0.3048));
        assertEquals("33.5 in", AMERICAN.millimetres(850), "850 / 25.4 = 33.465");
        assertEquals("0 ft", AMERICAN.metres(0));
        assertEquals("1,5 m", COMMA.metres(1.5));
    }

    @Test
    void temperaturesComeInFahrenheit() {
        assertEquals("104 °F", AMERICAN.celsius(40), "40 x 9 / 5 + 32");
        assertEquals("-40 °F", AMERICAN.celsius(-40));
        assertEquals("153 °F", AMERICAN.celsius(67.3), "67.3 x 9 / 5 + 32 = 153.14");
    }

    @Test
    void aMetricSizeIsShownByTheNearestGaugeAndNeverByOneThatIsNot() {
        assertEquals("≈20 AWG", AMERICAN.size(Gauge.metric(0.5)), "20 AWG has 0.5176 mm2");
        assertEquals("≈13 AWG", AMERICAN.size(Gauge.metric(2.5)), "13 AWG 2.624, 14 AWG 2.081 mm2");
        assertEquals("≈2/0 AWG", AMERICAN.size(Gauge.metric(70)), "2/0 has 67.43 mm2");
        assertEquals("≈4/0 AWG", AMERICAN.size(Gauge.metric(120)), "4/0 has 107.2, half a step above 120.4 mm2");
        assertEquals("150 mm²", AMERICAN.size(Gauge.metric(150)), "no gauge is near");
        assertEquals("14 AWG", AMERICAN.size(Gauge.awg(14)));
        assertEquals("≈2,08 mm²", COMMA.size(Gauge.awg(14)), "0.127 mm x 92^(22/39) across");
        assertEquals("2.5 mm²", ShownUnits.USUAL.size(Gauge.metric(2.5)));
        assertEquals("14 AWG", ShownUnits.USUAL.size(Gauge.awg(14)));
    }

    @Test
    void aBareNumberIsInTheUnitShownAndAnyOtherCanBeTyped() {
        assertEquals(0.9144, length(AMERICAN, "3"), "3 x 0.3048");
        assertEquals(0.9144, length(AMERICAN, "3 ft"));
        assertEquals(1.5, length(AMERICAN, "1,5 m"));
        assertEquals(1.234, length(COMMA, "1,234"), "the comma is the decimal sign");
        assertThrows(QuantityFormatException.class, () -> length(ShownUnits.USUAL, "1,234"), "may mean two things");
        assertEquals(
                40,
                QuantityParser.parse(AMERICAN.typed("104", Unit.DEGREE_CELSIUS), Unit.DEGREE_CELSIUS)
                        .canonical());
        assertEquals(Gauge.awg(16), Gauge.parse(AMERICAN.typedSize("16")));
        assertEquals(Gauge.awg(-1), Gauge.parse(AMERICAN.typedSize("2/0")));
        assertEquals(Gauge.metric(1.5), Gauge.parse(AMERICAN.typedSize("1,5 mm²")));
        assertThrows(QuantityFormatException.class, () -> AMERICAN.typedSize("≈13 AWG"), "a size near one is none");
    }

    private static double length(ShownUnits units, String typed) {
        return QuantityParser.parse(units.typed(typed, Unit.METRE), Unit.METRE).canonical();
    }

    @Test
    void whatEditingStartsFromReadsBackAsTheVeryValue() {
        assertEquals("3 ft", AMERICAN.start("0.9144 m", Unit.METRE));
        assertEquals("104 °F", AMERICAN.start("40 °C", Unit.DEGREE_CELSIUS));
        assertEquals("", AMERICAN.start("", Unit.METRE));
        Random random = new Random(6);
        for (int k = 0; k < 20_000; k++) {
            double metres = k % 2 == 0 ? Math.round(random.nextDouble() * 1e5) / 1e3 : random.nextDouble() * 10;
            String start = AMERICAN.start(metres + " m", Unit.METRE);
            assertEquals(metres, length(AMERICAN, start), start);
            double celsius = Math.round(random.nextDouble() * 3e3 - 500) / 10.0;
            String degrees = AMERICAN.start(celsius + " °C", Unit.DEGREE_CELSIUS);
            assertEquals(
                    celsius,
                    QuantityParser.parse(AMERICAN.typed(degrees, Unit.DEGREE_CELSIUS), Unit.DEGREE_CELSIUS)
                            .canonical(),
                    degrees);
        }
    }

    @Test
    void sentencesAreReadInTheUnitsShown() {
        assertEquals(
                "W1 runs at 193 °F, 13.8 in from P2: ≈13 AWG in place of 14 AWG",
                AMERICAN.text("W1 runs at 89.4 °C, 350 mm from P2: 2.5 mm2 in place of 14 AWG"));
        assertEquals("between 32.8 and 39.4 ft long", AMERICAN.text("between 10 and 12 m long"));
        assertEquals("loads 3 and 39.4 ft", AMERICAN.text("loads 3 and 12 m"), "a count before it is none");
        assertEquals("needs 2.34 mm²", AMERICAN.text("needs 2.34 mm²"), "an area asked for is no size");
        assertEquals("≈13 AWG to ≈9 AWG", AMERICAN.label("2.5 mm² to 6 mm²"));
        assertEquals("0,0125 Ω x 4,2 A = 52,5 mV, 2,08 mm²", COMMA.text("0.0125 Ω x 4.2 A = 52.5 mV, 2.08 mm²"));
        assertEquals("≈2,08 mm² carries 15 A", COMMA.text("14 AWG carries 15 A"));
        assertEquals("IEC 60364-5-52, 5.2.1 and 11.3", COMMA.text("IEC 60364-5-52, 5.2.1 and 11.3"), "no quantity");
        assertEquals("EX-2.5 m", AMERICAN.text("EX-2.5 m"), "part of a name");
        assertEquals("2 m/s at 0.3 Ω/m", AMERICAN.text("2 m/s at 0.3 Ω/m"), "other units");
    }

    @Test
    void aFindingIsConvertedFromItsExactValueAndNotFromTheRoundedOne() {
        assertEquals(
                "too long: 4.09 ft",
                AMERICAN.text("too long: 1.25 m", List.of(Quantity.of(1.2463, Unit.METRE))),
                "1.2463 / 0.3048 = 4.0889; 1.25 / 0.3048 = 4.10");
    }

    @Test
    void usualUnitsChangeNothing() {
        String text = "W1, 2.5 mm², 1.25 m at 67.3 °C";
        assertEquals(text, ShownUnits.USUAL.text(text));
        assertEquals("1.25 m", ShownUnits.USUAL.start("1.25 m", Unit.METRE));
        assertEquals("4.7 mΩ", ShownUnits.USUAL.quantity(0.0047, Dimension.RESISTANCE));
    }
}
