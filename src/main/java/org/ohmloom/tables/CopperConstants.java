package org.ohmloom.tables;

import java.util.HashMap;
import java.util.Map;
import org.ohmloom.words.Refusals;

/**
 * Constants of conductor copper.
 *
 * @param resistivity  resistivity of 100 % IACS copper at 20 C, ohm mm2/m
 * @param alpha20      temperature coefficient of resistance at 20 C, 1/K
 * @param beta         the number in R(T) = R20 (beta + T)/(beta + 20), C
 * @param heatCapacity heat to warm it, J/(K mm3)
 * @param adiabaticK   K of the short-circuit formula I2 t = K2 S2 ln(1 + (Tf - Ti)/(beta + Ti)), A s^0.5/mm2
 * @param meltingPoint melting point, C
 * @param density      density at 20 C, kg/m3
 */
public record CopperConstants(
        CitedValue resistivity,
        CitedValue alpha20,
        CitedValue beta,
        CitedValue heatCapacity,
        CitedValue adiabaticK,
        CitedValue meltingPoint,
        CitedValue density) {

    /** Temperature coefficient of resistance at 20 C, 1/K. */
    public double alpha20PerKelvin() {
        return alpha20.value();
    }

    /** The number in R(T) = R20 (beta + T)/(beta + 20), C. */
    public double betaCelsius() {
        return beta.value();
    }

    /** Resistance at a conductor temperature in C over resistance at 20 C: (beta + T)/(beta + 20). */
    public double resistanceRatio(double conductorCelsius) {
        return (beta.value() + conductorCelsius) / (beta.value() + 20);
    }

    /** Reads a sheet with the columns name and value; every constant must be there. */
    static CopperConstants read(SheetReader sheet) {
        Map<String, CitedValue> values = new HashMap<>();
        sheet.rows(row -> values.put(
                row.text("name"), new CitedValue(row.plainNumber("value"), row.citation(row.text("name"), "value"))));
        return new CopperConstants(
                find(sheet, values, "resistivity"),
                find(sheet, values, "alpha20"),
                find(sheet, values, "beta"),
                find(sheet, values, "heat-capacity"),
                find(sheet, values, "adiabatic-k"),
                find(sheet, values, "melting-point"),
                find(sheet, values, "density"));
    }

    private static CitedValue find(SheetReader sheet, Map<String, CitedValue> values, String name) {
        CitedValue value = values.get(name);
        if (value == null) {
            throw new TableFormatException(
                    sheet.sheet().fileName(),
                    0,
                    "name",
                    Refusals.text("there is no row %s; add a row of that name", name));
        }
        return value;
    }
}
