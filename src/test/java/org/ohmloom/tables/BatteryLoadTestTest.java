package org.ohmloom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.ohmloom.HandbookRows;

/**
 * The load test of a workshop manual, 300 A for 15 s, beside our battery: V = E - I x R x factor(temperature) x factor(15 s). The
 * manual's least voltages fall from 9.6 V at 20 C to 8.5 V at -18 C.
 */
class BatteryLoadTestTest {

    private static final double AMPS = 300;
    private static final double SECONDS = 15;
    private static final double TWO_DIGITS = 0.005;

    private final BatteryType type =
            WireTables.bundled().findBatteryType("lead-acid-flooded").orElseThrow();

    /** Rested and full: 6 cells of 2.1083 V. */
    private final double openVolts = 6 * type.openCircuit().at(100).value();

    private double factor(double celsius) {
        return type.temperatureFactor(celsius).value()
                * type.pulseFactor(SECONDS).value();
    }

    /** The resistance, at 25 C and for a pulse of 1 s, of a battery that just passes at a temperature. */
    private double justPassingOhms(Map<String, String> row) {
        double celsius = Double.parseDouble(row.get("celsius"));
        return (openVolts - Double.parseDouble(row.get("leastVolts"))) / AMPS / factor(celsius);
    }

    private double volts(double ohms, double celsius) {
        return openVolts - AMPS * ohms * factor(celsius);
    }

    @Test
    void aBatteryThatPassesTheLoadTestInTheColdPassesItAtEveryWarmerRow() throws IOException {
        List<Map<String, String>> rows = HandbookRows.of("battery-load-test.csv");
        assertEquals(8, rows.size());
        double ohms = justPassingOhms(rows.get(7));
        // (12.65 - 8.5) / 300 = 13.8 mohm at -18 C, 15 s; our factors make that 12.65 - 4.15 x 1.108 / 2.5 = 10.81 V at
        // 20 C
        assertEquals(0.0138, ohms * factor(-18), 0.0001);
        assertEquals(10.81, volts(ohms, 20), TWO_DIGITS);
        for (Map<String, String> row : rows) {
            double least = Double.parseDouble(row.get("leastVolts"));
            assertTrue(
                    volts(ohms, Double.parseDouble(row.get("celsius"))) >= least - 1e-9,
                    row + ": " + volts(ohms, Double.parseDouble(row.get("celsius"))));
        }
    }

    @Test
    void theManualAllowsLessForColdThanTheColdCrankingPowerWeReckonWith() throws IOException {
        List<Map<String, String>> rows = HandbookRows.of("battery-load-test.csv");
        // just good at 20 C: (12.65 - 9.6) / 300 = 10.2 mohm there; at -18 C 12.65 - 3.05 x 2.5 / 1.108 = 5.77 V, not
        // 8.5 V
        double ohms = justPassingOhms(rows.get(0));
        assertEquals(0.0102, ohms * factor(20), 0.0001);
        assertEquals(5.77, volts(ohms, -18), TWO_DIGITS);
        // so the battery that just passes has to be the better the colder it is tested, at every step
        for (int row = 1; row < rows.size(); row++) {
            assertTrue(justPassingOhms(rows.get(row)) < justPassingOhms(rows.get(row - 1)), rows.get(row)::toString);
        }
    }
}
