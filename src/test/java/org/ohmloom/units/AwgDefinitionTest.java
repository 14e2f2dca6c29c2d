package org.ohmloom.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The AWG geometry of ASTM B258 against a listing of it, to the last printed digit; the listing names its source. */
class AwgDefinitionTest {
    /** Conductivity of copper of 100 % IACS at 20 degC, metre per ohm and mm2. */
    private static final double IACS_CONDUCTIVITY = 58;

    static Stream<String> rows() {
        InputStream listing = Objects.requireNonNull(AwgDefinitionTest.class.getResourceAsStream("awg-definition.csv"));
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(listing, StandardCharsets.UTF_8))) {
            List<String> rows = lines.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("awg,"))
                    .toList();
            return rows.stream();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @Test
    void theListingIsNotEmpty() {
        assertTrue(rows().count() >= 24);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void agreesWithTheListingToTheLastPrintedDigit(String row) {
        String[] cells = row.split(",", -1);
        Gauge gauge = Gauge.parse(cells[0] + " AWG");
        assertEquals(cells[1], fixed(gauge.diameterMm(), 4), "diameter in mm");
        assertEquals(cells[2], fixed(gauge.diameterMm() / 0.0254, 3), "diameter in mil");
        assertEquals(cells[3], fixed(gauge.nominalAreaMm2(), 4), "area in mm2");
        assertEquals(cells[4], fixed(gauge.circularMils(), 1), "circular mils");
        assertEquals(
                new BigDecimal(cells[5]).stripTrailingZeros(),
                new BigDecimal(1000 / IACS_CONDUCTIVITY / gauge.nominalAreaMm2())
                        .round(new MathContext(4, RoundingMode.HALF_UP))
                        .stripTrailingZeros(),
                "milliohm per metre");
    }

    private static String fixed(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
