package org.ohmloom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What holds for every table file that comes with the program. */
class BundledTablesTest {
    private static final WireTables TABLES = WireTables.bundled();

    @Test
    void theContentsListNamesEveryTableFileOfTheFolder() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("wire-tables"))) {
            List<String> inFolder = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".csv"))
                    .sorted()
                    .toList();
            assertEquals(
                    inFolder,
                    TABLES.sheets().stream()
                            .map(sheet -> sheet.name() + ".csv")
                            .sorted()
                            .toList());
        }
    }

    @Test
    void everyTableHasAHeadAndEveryRowAStatus() {
        for (TableSheet sheet : TABLES.sheets()) {
            for (String key : List.of("kind", "id", "title", "source", "edition", "table", "status", "units")) {
                assertFalse(sheet.head().getOrDefault(key, "").isBlank(), sheet.fileName() + " has no " + key);
            }
            for (TableRow row : sheet.rows()) {
                assertEquals(row.status(), Status.parse(row.statusText()).orElseThrow(), sheet.fileName());
                assertEquals(sheet.columns().size(), row.cells().size(), sheet.fileName());
            }
        }
    }

    @Test
    void noTableNamesAWebAddress() {
        for (TableSheet sheet : TABLES.sheets()) {
            String text = (sheet.head() + " " + sheet.rows()).toLowerCase(Locale.ROOT);
            assertFalse(text.contains("http") || text.contains("www."), sheet.fileName());
        }
    }

    @Test
    void everyDesignBasisHasConductorsAmpacityAndAMechanicalMinimum() {
        for (DesignBasis basis : TABLES.bases()) {
            assertFalse(TABLES.family(basis.defaultAwgFamily()).rows().isEmpty());
            assertFalse(TABLES.family(basis.defaultMetricFamily()).rows().isEmpty());
            assertEquals(
                    TABLES.ampacity(basis.ampacityTable()).baseAmbientCelsius(),
                    basis.baseAmbientCelsius(),
                    basis.id() + ": base ambient of the basis and of its table");
            assertTrue(TABLES.mechanicalMinimum(basis.id()).isPresent(), basis.id());
            assertTrue(TABLES.deviceRatingRule(basis.id(), 12).isPresent(), basis.id());
            assertFalse(TABLES.placementRules(basis.id()).isEmpty(), basis.id());
        }
    }

    @Test
    void currentAndResistanceGoTheRightWayDownEveryTable() {
        for (ConductorFamily family : TABLES.families()) {
            for (int index = 1; index < family.rows().size(); index++) {
                assertTrue(
                        family.rows().get(index).ohmsPerMetreAt20Celsius()
                                < family.rows().get(index - 1).ohmsPerMetreAt20Celsius(),
                        family.id() + " at " + family.rows().get(index).gauge());
            }
        }
        for (AmpacityTable table : TABLES.ampacities()) {
            for (int index = 1; index < table.rows().size(); index++) {
                AmpacityRow thinner = table.rows().get(index - 1);
                AmpacityRow thicker = table.rows().get(index);
                thicker.ampsByCelsius()
                        .forEach((celsius, amps) -> assertTrue(
                                amps.value()
                                        >= thinner.ampsByCelsius().get(celsius).value(),
                                table.id() + " at " + thicker.gauge() + ", " + celsius + " C"));
            }
        }
    }
}
