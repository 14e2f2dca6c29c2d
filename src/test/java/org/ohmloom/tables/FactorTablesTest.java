package org.ohmloom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.ohmloom.units.Gauge;

/** Bundle and ambient factors. */
class FactorTablesTest {
    private static final WireTables TABLES = WireTables.bundled();

    @Test
    void noteTwoOfTableFiveCountsConductors() {
        // 33 CFR 183.425 Table 5, note 2: 3: 0.7; 4 to 6: 0.6; 7 to 24: 0.5; 25 and more: 0.4
        BundleFactors factors = TABLES.bundleFactors("33-cfr-183.425-note-2");
        assertEquals(1.0, factors.factor(1).value());
        assertEquals(1.0, factors.factor(2).value());
        assertEquals(0.7, factors.factor(3).value());
        assertEquals(0.6, factors.factor(4).value());
        assertEquals(0.6, factors.factor(6).value());
        assertEquals(0.5, factors.factor(7).value());
        assertEquals(0.4, factors.factor(200).value());
        assertEquals(
                "33 CFR 183.425, Table 5, note 2, row 7 to 24",
                factors.factor(24).citation().text());
    }

    @Test
    void theRegulationAsksForNoteTwoFromFiftyVoltsAndThePracticeAlways() {
        // 33 CFR 183.435(b): 50 V and more; ABYC E-11: every circuit
        assertFalse(TABLES.basis("33-cfr-183").asksForBundleFactors(24));
        assertTrue(TABLES.basis("33-cfr-183").asksForBundleFactors(50));
        assertTrue(TABLES.basis("abyc-e-11").asksForBundleFactors(12));
    }

    @Test
    void betweenRowsTheNextRowUpCounts() {
        // IEC 60364-5-52 Table B.52.17 lists 9 (0.50) and 12 (0.45) circuits; ten take the row of twelve
        BundleFactors factors = TABLES.bundleFactors("iec-60364-5-52");
        assertEquals(0.45, factors.factor(10).value());
        assertEquals(Status.FROM_MEMORY, factors.factor(10).citation().status());
    }

    @Test
    void beyondTheLastRowTheTotalHeatStays() {
        // last row: 20 circuits, 0.38. For 80: 0.38 sqrt(20/80) = 0.19; heat 80 x 0.19^2 = 20 x 0.38^2
        CitedValue factor = TABLES.bundleFactors("iec-60364-5-52").factor(80);
        assertEquals(0.19, factor.value(), 1e-15);
        assertEquals(Status.COMPUTED, factor.citation().status());
    }

    @Test
    void aBundleFactorNeverRisesWithTheCount() {
        for (DesignBasis basis : TABLES.bases()) {
            BundleFactors factors = TABLES.bundleFactors(basis.bundleTable().orElseThrow());
            for (int count = 1; count < 60; count++) {
                assertTrue(
                        factors.factor(count + 1).value()
                                <= factors.factor(count).value(),
                        factors.id() + " at " + count);
            }
        }
    }

    @Test
    void largeConductorsInAircraftBundlesAreDeratedSooner() {
        BundleFactors factors = TABLES.bundleFactors("ac-43.13-1b-loaded-bundle");
        // Table 11-9 holds 9 wires at 20 % from 8 AWG up: MIL-W-5088L 0.66 (4 at 100 %) / 0.775 = 0.851
        assertEquals(
                1.0, factors.factor(4, Gauge.parse("10 AWG").nominalAreaMm2()).value());
        assertEquals(
                0.851, factors.factor(4, Gauge.parse("8 AWG").nominalAreaMm2()).value());
        // and 33 wires at 20 % below: 0.465 (10 at 100 %) / 0.533 = 0.872
        assertEquals(0.872, factors.factor(10).value());
    }

    @Test
    void theBundleCurveAgreesWithTheWorkedExampleOfTheAdvisoryCircular() {
        // AC 43.13-1B Example No. 2 reads 0.6 for 8 wires at 60 % of the load; the curve of the same family has 0.595
        TableSheet sheet = TABLES.findSheet("mil-w-5088l-bundle").orElseThrow();
        TableRow eight = sheet.rows().stream()
                .filter(row -> row.cells().get(0).equals("8"))
                .findFirst()
                .orElseThrow();
        assertEquals(0.6, Double.parseDouble(eight.cells().get(sheet.columnIndex("load60"))), 0.01);
    }

    @Test
    void engineSpaceFactorOfBoatCable() {
        // 33 CFR 183.425 Table 5 note 1: 105 C insulation in an engine space (50 C): 0.85
        AmbientFactors factors = TABLES.ambientFactors("33-cfr-183.425-note-1");
        assertEquals(0.85, factors.factor(50, 105).orElseThrow().value());
        assertEquals(1.0, factors.factor(30, 105).orElseThrow().value());
        assertEquals(0.85, factors.factor(35, 110).orElseThrow().value(), "the next warmer row, the cooler column");
        assertEquals(Optional.empty(), factors.factor(51, 105));
        assertEquals(Optional.empty(), factors.factor(50, 55));
    }

    @Test
    void everyPrintedAmbientFactorIsTheSquareRootRule() {
        // I2 = I1 sqrt((Tc - Ta)/(Tc - base)), NEC 310.15(B): within half a unit of the second decimal
        checkSquareRoot("ambient-30", 30);
        checkSquareRoot("ambient-40", 40);
    }

    private static void checkSquareRoot(String id, double base) {
        TableSheet sheet = TABLES.sheets().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
        int cells = 0;
        SortedMap<Double, String> columns = new TreeMap<>(new SheetReader(sheet).temperatureColumns("factor"));
        for (TableRow row : sheet.rows()) {
            double ambient = Double.parseDouble(row.cells().get(0));
            for (var column : columns.entrySet()) {
                String cell = row.cells().get(sheet.columnIndex(column.getValue()));
                if (!cell.isEmpty()) {
                    double exact = Math.sqrt((column.getKey() - ambient) / (column.getKey() - base));
                    assertEquals(exact, Double.parseDouble(cell), 0.006, id + " " + ambient + " " + column.getKey());
                    cells++;
                }
            }
        }
        assertTrue(cells > 30, "cells checked: " + cells);
    }
}
