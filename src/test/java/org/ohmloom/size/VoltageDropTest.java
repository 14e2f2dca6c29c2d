package org.ohmloom.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/** The published sizing checks of FAA AC 43.13-1B CHG 1 come out as printed, the misprints as their own arithmetic. */
@BesideOthers
class VoltageDropTest {
    private static final double METRES_PER_FOOT = 0.3048;
    private static final double WORKED = 5e-5;
    /** Printed with two or three digits. */
    private static final double PRINTED_VOLT = 0.005;
    /** Lengths are printed in whole or half feet, rounded down or to the nearest. */
    private static final double PRINTED_FEET = 1.0;
    /** Resistance at 20 C over resistance at 20 C. */
    private static final double COOL = 1;

    private static final Set<String> MISPRINTS = Set.of("11-7 row 3", "11-8 row 2");

    private final WireTables tables = WireTables.bundled();
    private final ConductorFamily family = tables.family("ac-43.13-1b");

    private record Row(
            String name,
            boolean asksSize,
            double limitVolts,
            double amps,
            double feet,
            Gauge gauge,
            double printedVolts,
            double workedVolts) {}

    private static List<Row> rows() throws IOException {
        String file = "ac-43-13-1b-tables-11-7-and-11-8.csv";
        try (InputStream stream = VoltageDropTest.class.getResourceAsStream(file)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.startsWith("11-"))
                    .map(line -> line.split(","))
                    .map(cell -> new Row(
                            cell[0] + " row " + cell[1],
                            cell[2].equals("size"),
                            Double.parseDouble(cell[3]),
                            Double.parseDouble(cell[4]),
                            Double.parseDouble(cell[5]),
                            Gauge.parse(cell[6]),
                            Double.parseDouble(cell[7]),
                            Double.parseDouble(cell[8])))
                    .toList();
        }
    }

    @Test
    void theTablesOfTheAdvisoryCircularChooseThePrintedSizes() throws IOException {
        List<Row> asking = rows().stream().filter(Row::asksSize).toList();
        assertEquals(2, asking.size());
        for (Row row : asking) {
            ConductorRow chosen = VoltageDrop.thinnest(
                            family, row.feet * METRES_PER_FOOT, row.amps, row.limitVolts, COOL)
                    .orElseThrow();
            assertEquals(row.gauge, chosen.gauge(), row.name);
        }
    }

    @Test
    void theTablesOfTheAdvisoryCircularGiveThePrintedLengths() throws IOException {
        List<Row> asking = rows().stream().filter(row -> !row.asksSize).toList();
        assertEquals(3, asking.size());
        for (Row row : asking) {
            ConductorRow conductor = family.row(row.gauge).orElseThrow();
            double feet = VoltageDrop.longestMetres(conductor, row.amps, row.limitVolts, COOL) / METRES_PER_FOOT;
            // 1 V: 39.68 ft, printed 39; 0.5 V: 19.84, printed 19.5; 7 V: 277.8, printed 273 (seven times 39)
            double printed = row.feet / row.limitVolts;
            assertEquals(printed, feet / row.limitVolts, PRINTED_FEET, row.name);
            assertTrue(row.feet <= feet, row.name + ": the printed length keeps the limit");
        }
    }

    @Test
    void theirChecksComeOutAsPrintedButForTwoMisprints() throws IOException {
        for (Row row : rows()) {
            ConductorRow conductor = family.row(row.gauge).orElseThrow();
            double volts = VoltageDrop.volts(conductor, row.feet * METRES_PER_FOOT, row.amps, COOL);
            assertEquals(row.workedVolts, volts, WORKED, row.name);
            assertEquals(!MISPRINTS.contains(row.name), Math.abs(volts - row.printedVolts) <= PRINTED_VOLT, row.name);
        }
    }

    @Test
    void exampleOneFallsBetweenTenAndEightAndTakesEight() {
        // FAA AC 43.13-1B CHG 1 par 11-67, Example No. 1: 50 ft with the ground wire, 20 A continuous, 28 V, conductor
        // at 20 C or below, 1 V allowed: 1.00 ohm per 1000 ft. No. 10 has 1.26, No. 8 has 0.70.
        ConductorRow chosen =
                VoltageDrop.thinnest(family, 50 * METRES_PER_FOOT, 20, 1, COOL).orElseThrow();
        assertEquals(Gauge.awg(8), chosen.gauge());
        ConductorRow ten = family.row(Gauge.awg(10)).orElseThrow();
        assertEquals(1.26, VoltageDrop.volts(ten, 50 * METRES_PER_FOOT, 20, COOL), 1e-9);
    }

    @Test
    void noSizeIsFoundWhenTheLimitAsksForMoreThanTheLargest() {
        // 4/0 AWG is 0.06 ohm per 1000 ft: 1000 ft at 20 A lose 1.2 V
        assertTrue(VoltageDrop.thinnest(family, 1000 * METRES_PER_FOOT, 20, 1.1, COOL)
                .isEmpty());
        assertEquals(
                Gauge.awg(-3),
                VoltageDrop.thinnest(family, 1000 * METRES_PER_FOOT, 20, 1.2, COOL)
                        .orElseThrow()
                        .gauge());
    }
}
