package org.ohmloom.manual.formula;

import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.bundle.CopperMass;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.size.VoltageDrop;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.Status;
import org.ohmloom.units.Gauge;

/** Resistance, drop, length and size of conductors. */
final class ConductorFormulas {

    private static final Citation CITATION = new Citation("example", "none", "invented", "", Status.COMMON_PRACTICE);

    private static final ConductorRow ROW =
            new ConductorRow(Gauge.metric(2.5), 2.5, 0.0076, OptionalDouble.empty(), CITATION);

    static final List<Formula> ALL = List.of(
            new Formula(
                    "conductor-resistance",
                    "Resistance of a conductor at temperature",
                    "R(T) = R(20) x (b + T) / (b + 20)",
                    Symbol.of(
                            """
                    R(T) | resistance at the conductor temperature | ohm
                    R(20) | resistance at 20 °C: the listed resistance of a metre times the length | ohm
                    b | 234.5 for copper | °C
                    T | conductor temperature | °C
                    """),
                    "Holds for copper between about −50 and 200 °C. The listed resistance comes from the row of the conductor family, never from the size's label. A measured resistance of a built harness can take its place.",
                    "IEC 60949:1988, β for copper; the listed resistance by its own table",
                    "R(20) x (",
                    List.of("views/inspector", "views/conductors"),
                    new Worked(
                            "2.5 mm² with 7.6 mΩ for a metre, 1 m, at 60 °C.",
                            "7.6 x (234.5 + 60) / 254.5 = 7.6 x 1.157 = 8.794 mΩ",
                            8.794,
                            "mΩ",
                            () -> 1000 * new RoundWire(0.0076, 2.5, 2, 3, 0.17).ohmsPerMetreAt(60))),
            new Formula(
                    "voltage-drop",
                    "Voltage drop of a conductor",
                    "V = I x R' x k x L",
                    Symbol.of(
                            """
                    V | voltage lost along the wire | V
                    I | current while everything switched is on | A
                    R' | listed resistance of a metre at 20 °C | ohm/m
                    k | ratio of resistance at temperature to that at 20 °C |
                    L | cut length | m
                    """),
                    "One way; feed and return of a load are added up along the way the current takes. What contacts, fuses and joints lose is added to it.",
                    "Ohm's law",
                    "",
                    List.of("views/inspector", "rules/drop-over-limit"),
                    new Worked(
                            "10 A through 4 m of 2.5 mm² with 7.6 mΩ for a metre, at 60 °C (k = 1.157).",
                            "10 x 0.0076 x 1.157 x 4 = 0.3517 V",
                            0.3517,
                            "V",
                            () -> VoltageDrop.volts(ROW, 4, 10, (234.5 + 60) / 254.5))),
            new Formula(
                    "longest-run",
                    "Longest run for a drop",
                    "L = V / (I x R' x k)",
                    Symbol.of(
                            """
                    L | longest length one way | m
                    V | voltage the wire may lose | V
                    I | current | A
                    R' | listed resistance of a metre at 20 °C | ohm/m
                    k | ratio of resistance at temperature to that at 20 °C |
                    """),
                    "The drop solved for the length.",
                    "Ohm's law",
                    "",
                    List.of("views/conductors"),
                    new Worked(
                            "0.25 V may be lost at 10 A by 2.5 mm² with 7.6 mΩ for a metre, at 20 °C (k = 1).",
                            "0.25 / (10 x 0.0076 x 1) = 3.289 m",
                            3.289,
                            "m",
                            () -> VoltageDrop.longestMetres(ROW, 10, 0.25, 1))),
            new Formula(
                    "wire-gauge",
                    "Diameter of an AWG size",
                    "d = 0.127 mm x 92^((36 - n) / 39)",
                    Symbol.of(
                            """
                    d | diameter of the solid round wire of that number | mm
                    n | AWG number; 0, -1, -2, -3 for 1/0 to 4/0 |
                    """),
                    "Names a size. A stranded conductor is thicker than this, and what it resists comes from its table.",
                    "ASTM B258: 0.005 inch for 36 and 0.46 inch for 4/0 in 39 equal ratios",
                    "",
                    List.of("lists/wires"),
                    new Worked(
                            "14 AWG.",
                            "92^(22/39) = 92^0.5641 = 12.82; 0.127 x 12.82 = 1.628 mm",
                            1.628,
                            "mm",
                            () -> Gauge.awg(14).diameterMm())),
            new Formula(
                    "copper-mass",
                    "Mass of copper",
                    "m = d x A x L",
                    Symbol.of(
                            """
                    m | mass | kg
                    d | density of copper, by the table of copper | kg/m³
                    A | copper area | m²
                    L | length | m
                    """),
                    "Strands' lay and insulation are not in it. For metric sizes the area is the size's label, a little more than the copper there.",
                    "Geometry; density by the table of copper constants",
                    "",
                    List.of("views/what-if", "dialogs/build-pack"),
                    new Worked(
                            "100 m of 2.5 mm² at 8890 kg/m³.",
                            "8890 x 2.5e-6 x 100 = 2.2225 kg",
                            2.2225,
                            "kg",
                            () -> new CopperMass(new CitedValue(8890, CITATION)).kilograms(2.5, 100))));

    private ConductorFormulas() {}
}
