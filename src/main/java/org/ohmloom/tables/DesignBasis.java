package org.ohmloom.tables;

import java.util.Locale;
import java.util.Optional;

/**
 * A body of published practice a harness can be judged by: which table serves which question.
 *
 * @param id                  what files call it, as in "ac-43.13-1b"
 * @param title               what people call it
 * @param defaultAwgFamily    conductor family for AWG sizes
 * @param defaultMetricFamily conductor family for metric sizes
 * @param ampacityTable       ampacity table
 * @param bundleTable         bundle factors on top of it, where there are any
 * @param bundleFromVolts     the voltage from which the body asks for the bundle factors, V; 0 for always
 * @param baseAmbientCelsius  air temperature the ampacity table holds for, C
 * @param ambientRule         how other air temperatures are reckoned; "square-root" for I sqrt((Tc-Ta)/(Tc-base))
 * @param ambientTable        the body's own printed ambient factors, where it has them
 * @param dropTable           allowed voltage drops, where there are any
 * @param protectorTable      the body's own chart of largest breakers and fuses, where it has one
 * @param placementSeverity   weight of the rules on where a protective device may sit
 * @param citation            who says that these tables belong together
 */
public record DesignBasis(
        String id,
        String title,
        String defaultAwgFamily,
        String defaultMetricFamily,
        String ampacityTable,
        Optional<String> bundleTable,
        double bundleFromVolts,
        double baseAmbientCelsius,
        String ambientRule,
        Optional<String> ambientTable,
        Optional<String> dropTable,
        Optional<String> protectorTable,
        PlacementSeverity placementSeverity,
        Citation citation) {

    /** Whether the body asks for its bundle factors at that system voltage, V. */
    public boolean asksForBundleFactors(double systemVolts) {
        return bundleTable.isPresent() && systemVolts >= bundleFromVolts;
    }

    /** Reads a row; "none" stands for no table. */
    static DesignBasis read(RowReader row) {
        String id = row.text("id");
        return new DesignBasis(
                id,
                row.text("title"),
                row.text("defaultAwgFamily"),
                row.text("defaultMetricFamily"),
                row.text("ampacityTable"),
                row.textOrNone("bundleTable"),
                row.number("bundleFromVolts", "V"),
                row.number("baseAmbientCelsius", "C"),
                row.text("ambientRule"),
                row.textOrNone("ambientTable"),
                row.textOrNone("dropTable"),
                row.textOrNone("protectorTable"),
                severity(row),
                row.citation(id, "ampacityTable"));
    }

    private static PlacementSeverity severity(RowReader row) {
        String text = row.text("placementSeverity");
        for (PlacementSeverity severity : PlacementSeverity.values()) {
            if (severity.name().toLowerCase(Locale.ROOT).equals(text)) {
                return severity;
            }
        }
        throw row.wrong("placementSeverity", "'" + text + "' is not a severity", "write error, warning or note");
    }
}
