package org.ohmloom.tables;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.words.Refusals;

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
 * @param heatBalanceMarginFraction share of the current by heat balance kept in reserve, for a body without an ampacity
 *                            table of its own: sizes go by the heat balance and the ampacity table only holds it down where
 *                            it would allow more; empty for a body whose table decides
 * @param curveTable          bundle curves by percent of total capacity for the body's chart procedure, where it has one
 * @param altitudeTable       altitude factors for the same
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
        Citation citation,
        OptionalDouble heatBalanceMarginFraction,
        Optional<String> curveTable,
        Optional<String> altitudeTable) {

    /** Whether sizes go by the heat balance, held down by the ampacity table. */
    public boolean byHeatBalance() {
        return heatBalanceMarginFraction.isPresent();
    }

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
                row.citation(id, "ampacityTable"),
                margin(row),
                row.optionalText("curveTable").filter(name -> !name.equals(Citation.NONE)),
                row.optionalText("altitudeTable").filter(name -> !name.equals(Citation.NONE)));
    }

    private static OptionalDouble margin(RowReader row) {
        if (row.optionalText("heatBalanceMargin")
                .filter(text -> !text.equals(Citation.NONE))
                .isEmpty()) {
            return OptionalDouble.empty();
        }
        double margin = row.number("heatBalanceMargin", "1");
        if (margin < 0 || margin > 0.9) {
            throw row.unfit(
                    "heatBalanceMargin", Refusals.text("the margin is not from 0 to 0.9; write a share such as 0.1"));
        }
        return OptionalDouble.of(margin);
    }

    private static PlacementSeverity severity(RowReader row) {
        String text = row.text("placementSeverity");
        for (PlacementSeverity severity : PlacementSeverity.values()) {
            if (severity.name().toLowerCase(Locale.ROOT).equals(text)) {
                return severity;
            }
        }
        throw row.unfit(
                "placementSeverity", Refusals.text("'%s' is not a severity; write error, warning or note", text));
    }
}
