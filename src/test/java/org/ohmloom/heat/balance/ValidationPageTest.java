package org.ohmloom.heat.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.judged.FaultTable;

/**
 * Holds the heat balance to every published point we have, prints the table of errors and keeps
 * {@code src/docs/validation.md} the same as it. After a change of the physics,
 * {@code mvn test -Dtest=ValidationPageTest -Dohmloom.update=true} writes the page anew.
 */
class ValidationPageTest {

    private static final Path PAGE = Path.of("src/docs/validation.md");
    /** What the reference bundle reaches at full load: root mean square in percent for its two wires. */
    private static final double REFERENCE_BUNDLE = 4.1;
    /** Partial load: half of the reference's root mean square of 16 percent. */
    private static final double HALF_OF_REFERENCE_PARTIAL = 8;

    private static final List<ValidationSection> SECTIONS = List.of(
            FreeAirValidation.dinVde(),
            FreeAirValidation.nec(),
            FreeAirValidation.aircraft(),
            FreeAirValidation.altitude(),
            FreeAirValidation.appliance(),
            FreeAirValidation.thinApplianceWire(),
            BundleValidation.fullLoad(),
            BundleValidation.partialLoad(),
            TransientValidation.lumped(),
            TransientValidation.published(),
            PieceValidation.pieces(),
            PieceValidation.flatCable());

    @Test
    void everyPublishedPointIsWithinItsTolerance() {
        SECTIONS.forEach(section -> System.out.println(section.text()));
        List<String> outside = SECTIONS.stream()
                .flatMap(section -> section.points().stream()
                        .filter(point -> !point.holds())
                        .map(point -> section.title() + ": " + point.line()))
                .toList();
        assertEquals(List.of(), outside);
    }

    @Test
    void theErrorsTogetherAreNoLargerThanTheReferenceModels() {
        assertTrue(BundleValidation.fullLoad().rootMeanSquare() <= REFERENCE_BUNDLE);
        assertTrue(BundleValidation.partialLoad().rootMeanSquare() <= HALF_OF_REFERENCE_PARTIAL);
        // reference errors at 30 C with Churchill-Chu: root mean square over the nine sizes
        double reference = Math.sqrt(ReferenceRows.of("free-air-din-vde-model.csv").stream()
                .mapToDouble(row -> ReferenceRows.number(row, "err_CC_pct"))
                .map(error -> error * error)
                .average()
                .orElseThrow());
        double ours = Math.sqrt(FreeAirValidation.dinVde().points().stream()
                .filter(point -> point.name().endsWith("30 C"))
                .mapToDouble(ValidationPoint::errorPercent)
                .map(error -> error * error)
                .average()
                .orElseThrow());
        assertTrue(ours < reference, ours + " against " + reference);
    }

    @Test
    void thePageShowsTheErrorsAsTheyAre() throws Exception {
        if (Boolean.getBoolean("ohmloom.update")) {
            Files.writeString(PAGE, page());
        }
        assertEquals(page(), Files.readString(PAGE));
    }

    private static String page() throws IOException {
        StringBuilder page = new StringBuilder(
                """
                # How far the temperatures can be trusted

                The heat balance (`org.ohmloom.heat.balance`) against every published current and temperature we hold, point by point. The
                values are in `src/test/resources/references/heat`, each file with its source. Natural convection by Churchill and Chu,
                for thin wires by Raithby and Hollands; emissivity 0.9; insulation 0.17 W/mK unless its type states its own; air by
                Sutherland at film temperature; copper (234.5 + T)/254.5. An error above zero means we allow more current, or
                take longer to warm, than the source: the unsafe side.

                Ratings are rules and carry a reserve nobody prints; only the aircraft charts, the flat cable and the ignition tests
                were measured.

                `mvn test -Dtest=ValidationPageTest -Dohmloom.update=true` writes this page anew; the build prints the same tables
                and fails when a point leaves its tolerance or the page is out of date. The last section is not about temperatures: it tells
                which faults in returns are found.

                """);
        SECTIONS.forEach(section -> page.append(section.text()).append('\n'));
        return page.append(FaultTable.kept()).toString().stripTrailing() + "\n";
    }
}
