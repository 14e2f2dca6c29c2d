package org.ohmloom.tables;

import java.util.List;

/**
 * A range of supply voltage in which equipment works, by the code its maker states.
 *
 * @param code         the code
 * @param nominalVolts nominal voltage of the system, V
 * @param minimumVolts least supply voltage, V
 * @param maximumVolts highest supply voltage, V
 */
public record SupplyCode(String code, double nominalVolts, CitedValue minimumVolts, CitedValue maximumVolts) {

    /** The codes of a system voltage, V, that stand a supply as low as this, V. */
    public static List<SupplyCode> standing(List<SupplyCode> codes, double nominalVolts, double lowestVolts) {
        return codes.stream()
                .filter(code -> code.nominalVolts() == nominalVolts
                        && code.minimumVolts().value() <= lowestVolts)
                .toList();
    }

    /** Reads a row with the columns code, nominalVolts, minimumVolts and maximumVolts. */
    static SupplyCode read(RowReader row) {
        String text = "supply code " + row.text("code");
        return new SupplyCode(
                row.text("code"),
                row.positive("nominalVolts", "V"),
                new CitedValue(row.positive("minimumVolts", "V"), row.citation(text, "minimumVolts")),
                new CitedValue(row.positive("maximumVolts", "V"), row.citation(text, "maximumVolts")));
    }
}
