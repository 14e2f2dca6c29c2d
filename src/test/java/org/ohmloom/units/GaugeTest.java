package org.ohmloom.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GaugeTest {
    private static final double ROUNDING = 1e-12;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "14 AWG|14 AWG",
                "AWG 14|14 AWG",
                "awg14|14 AWG",
                " 14awg |14 AWG",
                "#14 AWG|14 AWG",
                "2/0 AWG|2/0 AWG",
                "AWG 2/0|2/0 AWG",
                "4/0|4/0 AWG",
                "4 / 0 AWG|4/0 AWG",
                "0 AWG|1/0 AWG",
                "000 AWG|3/0 AWG",
                "2.5 mm2|2.5 mm2",
                "2,5 mm²|2.5 mm2",
                "0.35mm^2|0.35 mm2",
                "120 sq mm|120 mm2",
            })
    void readsTheWaysASizeIsWrittenAndWritesOne(String typed, String text) {
        assertEquals(text, Gauge.parse(typed).text());
    }

    @Test
    void everyAwgNumberReadsBackFromItsText() {
        for (int number = Gauge.THICKEST_AWG; number <= Gauge.THINNEST_AWG; number++) {
            Gauge gauge = Gauge.awg(number);
            assertEquals(gauge, Gauge.parse(gauge.text()), gauge.text());
        }
        assertEquals("4/0 AWG", Gauge.awg(-3).text());
        assertEquals("1/0 AWG", Gauge.awg(0).text());
        assertEquals("1 AWG", Gauge.awg(1).text());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.13, 0.22, 0.35, 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 400})
    void everyMetricSizeReadsBackFromItsText(double areaMm2) {
        Gauge gauge = Gauge.metric(areaMm2);
        assertEquals(gauge, Gauge.parse(gauge.text()));
        assertEquals(areaMm2, gauge.nominalAreaMm2());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "14|'14' does not say AWG or mm2; a conductor size such as '14 AWG', '2/0 AWG' or '2.5 mm2' is needed",
                "41 AWG|'41 AWG' is not an AWG size; those go from 4/0 to 1/0 and from 1 to 40",
                "5/0 AWG|'5/0 AWG' is not an AWG size; those go from 4/0 to 1/0 and from 1 to 40",
                "-1 AWG|'-1 AWG' is not an AWG size; those go from 4/0 to 1/0 and from 1 to 40",
                "AWG|'AWG' is not an AWG size; those go from 4/0 to 1/0 and from 1 to 40",
                "250 kcmil|'250 kcmil' is not in AWG or mm2; a conductor size such as '14 AWG', '2/0 AWG' or '2.5 mm2' is needed",
                "0.04 mm2|'0.04 mm2' is not a size between 0.05 and 400 mm2; a conductor size such as '14 AWG', '2/0 AWG' or '2.5 mm2' is needed",
                "1,234 mm2|'1,234 mm2' may mean 1234 or 1.234; write the one that is meant",
                "thick|'thick' does not begin with a number; a conductor size such as '14 AWG', '2/0 AWG' or '2.5 mm2' is needed",
                "''|nothing was entered; a conductor size such as '14 AWG', '2/0 AWG' or '2.5 mm2' is needed",
            },
            quoteCharacter = '~')
    void refusesWithOneLine(String typed, String message) {
        String text = typed.equals("''") ? "" : typed;
        assertEquals(
                message,
                assertThrows(QuantityFormatException.class, () -> Gauge.parse(text))
                        .getMessage());
    }

    @Test
    void refusesNumbersOutsideItsRange() {
        assertThrows(IllegalArgumentException.class, () -> Gauge.awg(41));
        assertThrows(IllegalArgumentException.class, () -> Gauge.awg(-4));
        assertThrows(IllegalArgumentException.class, () -> new Gauge(GaugeSystem.AWG, 14.5));
        assertThrows(IllegalArgumentException.class, () -> new Gauge(GaugeSystem.AWG, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Gauge.metric(0.0499));
        assertThrows(IllegalArgumentException.class, () -> Gauge.metric(401));
        assertThrows(IllegalArgumentException.class, () -> Gauge.metric(Double.NaN));
    }

    @Test
    void sizesOfBothSystemsSortByCopperArea() {
        // 14 AWG is 2.08 mm2, 12 AWG 3.31 mm2, 4/0 107 mm2
        List<String> sorted = Stream.of("4/0 AWG", "2.5 mm2", "12 AWG", "2 mm2", "14 AWG", "120 mm2")
                .map(Gauge::parse)
                .sorted()
                .map(Gauge::text)
                .toList();
        assertEquals(List.of("2 mm2", "14 AWG", "2.5 mm2", "12 AWG", "4/0 AWG", "120 mm2"), sorted);
    }

    @Test
    void definingDiametersAreExact() {
        // ASTM B258: 36 AWG is 0.005 inch = 0.127 mm, 4/0 is 0.46 inch = 11.684 mm, 92 times as much
        assertEquals(0.127, Gauge.awg(36).diameterMm(), ROUNDING);
        assertEquals(11.684, Gauge.awg(-3).diameterMm(), ROUNDING);
        assertEquals(211_600, Gauge.awg(-3).circularMils(), 1e-6);
    }

    @Test
    void metricDiameterIsThatOfTheCircle() {
        // 2.5 mm2: 2 x sqrt(2.5 / pi) = 1.784 mm
        assertEquals(1.784, Gauge.metric(2.5).diameterMm(), 0.0005);
        assertTrue(Gauge.metric(2.5).circularMils() > Gauge.awg(14).circularMils());
    }
}
