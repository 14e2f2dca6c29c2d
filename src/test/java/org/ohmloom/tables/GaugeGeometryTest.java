package org.ohmloom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.ohmloom.units.Gauge;

/** The gauge table against the definition of ASTM B258, d = 0.127 mm x 92^((36 - n)/39). */
class GaugeGeometryTest {
    private static final WireTables TABLES = WireTables.bundled();

    @Test
    void everyPrintedDigitOfTheGaugeTableFollowsFromTheDefinition() {
        TableSheet sheet = TABLES.findSheet("awg-geometry").orElseThrow();
        assertEquals(40, sheet.rows().size(), "4/0 to 36 AWG");
        for (TableRow row : sheet.rows()) {
            Gauge gauge = Gauge.parse(row.cells().get(0) + " AWG");
            double diameterMm = 0.127 * Math.pow(92, (36 - gauge.number()) / 39);
            double mils = diameterMm / 0.0254;
            assertPrinted(diameterMm, row.cells().get(1));
            assertPrinted(mils, row.cells().get(2));
            assertPrinted(Math.PI / 4 * diameterMm * diameterMm, row.cells().get(3));
            assertPrinted(mils * mils, row.cells().get(4));
            // 100 % IACS copper: 1000/58 mohm mm2/m
            assertPrinted(
                    1000.0 / 58 / (Math.PI / 4 * diameterMm * diameterMm),
                    row.cells().get(5));
        }
    }

    @Test
    void theEndsOfTheScaleAreTheirRoundNumbers() {
        TableSheet sheet = TABLES.findSheet("awg-geometry").orElseThrow();
        assertEquals("460.000", sheet.rows().get(0).cells().get(2), "4/0 is 460 mil");
        assertEquals("5.000", sheet.rows().get(39).cells().get(2), "36 is 5 mil");
    }

    @Test
    void saeGaugesHoldLessCopperThanAwg() {
        for (ConductorRow row : TABLES.family("sae-j1128").rows()) {
            double ratio = row.copperAreaMm2() / row.gauge().nominalAreaMm2();
            // SAE J1128 and J1127 areas are 2 to 12 % below AWG
            assertEquals(0.93, ratio, 0.055, row.gauge().text());
        }
    }

    private static void assertPrinted(double exact, String printed) {
        int decimals = printed.contains(".") ? printed.length() - printed.indexOf('.') - 1 : 0;
        double halfDigit = 0.5 * Math.pow(10, -decimals) * (1 + 1e-9);
        assertEquals(exact, Double.parseDouble(printed), halfDigit, printed);
    }
}
