package org.ohmloom.manual.formula;

import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.model.ElectronicLimit;
import org.ohmloom.size.protection.Adiabatic;
import org.ohmloom.size.protection.ContinuousRating;
import org.ohmloom.size.protection.LimitedOutputs;
import org.ohmloom.size.protection.Onderdonk;
import org.ohmloom.size.protection.Preece;
import org.ohmloom.tables.WireTables;

/** Devices and conductors in a fault. */
final class ProtectionFormulas {

    static final List<Formula> ALL = List.of(
            new Formula(
                    "short-circuit-time",
                    "Time a conductor stands a short circuit",
                    "t = (k x S / I)^2",
                    Symbol.of(
                            """
                    t | time until the insulation's short-time limit | s
                    k | factor of copper between two temperatures | A s^0.5/mm²
                    S | cross-section | mm²
                    I | fault current | A
                    """),
                    "Adiabatic: all heat stays in the copper, which is right below about 5 s and safe beyond.",
                    "IEC 60364-4-43, clause 434.5.2",
                    "",
                    List.of("views/protection", "rules/conductor-not-protected"),
                    new Worked(
                            "k = 115, 2.5 mm², 200 A.",
                            "115 x 2.5 / 200 = 1.4375; squared 2.066 s",
                            2.066,
                            "s",
                            () -> Adiabatic.seconds(115, 2.5, 200))),
            new Formula(
                    "short-circuit-factor",
                    "Factor k of copper",
                    "k = K x sqrt(ln((b + Tf) / (b + Ti)))",
                    Symbol.of(
                            """
                    k | factor between the two temperatures | A s^0.5/mm²
                    K | 226 for copper | A s^0.5/mm²
                    b | 234.5 for copper | °C
                    Ti | temperature before the fault | °C
                    Tf | temperature the insulation stands for a moment | °C
                    """),
                    "K and b are rows of the table of copper constants.",
                    "IEC 60949:1988",
                    "",
                    List.of("views/protection"),
                    new Worked(
                            "From 70 to 160 °C.",
                            "ln(394.5 / 304.5) = 0.2589; root 0.5088; x 226 = 115.0",
                            115.0,
                            "A s^0.5/mm²",
                            () -> Adiabatic.k(WireTables.bundled().copper(), 70, 160))),
            new Formula(
                    "smallest-for-fault",
                    "Smallest conductor for a fault",
                    "S = I x sqrt(t) / k",
                    Symbol.of(
                            """
                    S | cross-section | mm²
                    I | fault current | A
                    t | time until the device opens | s
                    k | factor of copper between two temperatures | A s^0.5/mm²
                    """),
                    "The same law solved for the size.",
                    "IEC 60364-4-43, clause 434.5.2",
                    "",
                    List.of("views/conductors"),
                    new Worked(
                            "200 A for 0.5 s, k = 115.",
                            "200 x 0.7071 / 115 = 1.230 mm²",
                            1.23,
                            "mm²",
                            () -> Adiabatic.areaMm2(115, 200, 0.5))),
            new Formula(
                    "melting-in-a-moment",
                    "Current that melts a conductor in a moment",
                    "33 x (I / A)^2 x t = log10((Tm - Ta) / (234 + Ta) + 1)",
                    Symbol.of(
                            """
                    I | current | A
                    A | area | circular mils
                    t | time | s
                    Tm | melting point of copper | °C
                    Ta | temperature before | °C
                    """),
                    "Onderdonk's equation. A widely copied example writes 234 - Ta and comes to 5 % more.",
                    "Onderdonk, as handbooks print it (from memory)",
                    "",
                    List.of("views/protection"),
                    new Worked(
                            "1 mm² for 1 s from 25 °C; copper melts at 1083 °C.",
                            "1 mm² = 1973.5 circular mils; log10(1058 / 259 + 1) = 0.7063; sqrt(0.7063 / 33) = 0.1463; x 1973.5 = 288.7 A",
                            288.7,
                            "A",
                            () -> Onderdonk.meltingAmps(WireTables.bundled().copper(), 1, 1, 25))),
            new Formula(
                    "melting-for-good",
                    "Current that melts a wire when it lasts",
                    "I = 10244 x d^1.5",
                    Symbol.of(
                            """
                    I | current | A
                    d | diameter | inch
                    """),
                    "Preece's equation: a round copper wire in free air. For a moment it stands more.",
                    "Preece, as handbooks print it (from memory)",
                    "",
                    List.of("views/protection"),
                    new Worked(
                            "d = 1 mm = 0.03937 inch.",
                            "0.03937^1.5 = 0.007812; x 10244 = 80.02 A",
                            80.02,
                            "A",
                            () -> Preece.meltingAmps(1))),
            new Formula(
                    "least-rating",
                    "Least rating of a device for a lasting current",
                    "In = I / (c x a)",
                    Symbol.of(
                            """
                    In | least rating | A
                    I | lasting current | A
                    c | share of its rating a device may carry for good |
                    a | share of its rating it carries in the air around it |
                    """),
                    "Both shares are rows of tables: fuse derating and fuse ambient.",
                    "The rows themselves",
                    "continuous = ",
                    List.of("views/protection", "rules/device-overloaded"),
                    new Worked(
                            "8 A, c = 0.8, a = 0.9.",
                            "8 / 0.72 = 11.11 A",
                            11.11,
                            "A",
                            () -> ContinuousRating.leastAmps(8, 0.8, 0.9))),
            new Formula(
                    "heat-of-retries",
                    "Heating current of a fault a limit retries into",
                    "I = Il x sqrt(tt / (tt + tr))",
                    Symbol.of(
                            """
                    I | RMS current of a lasting fault | A
                    Il | electronic current limit | A
                    tt | time until it trips | s
                    tr | time until it tries again | s
                    """),
                    "The limit itself when it never trips, 0 when it trips for good.",
                    "Algebra: root mean square over one period",
                    "",
                    List.of("views/protection", "rules/limited-fault-overheats"),
                    new Worked(
                            "10 A limit, trips after 0.1 s, tries again after 0.9 s.",
                            "0.1 / 1.0 = 0.1; root 0.3162; x 10 = 3.162 A",
                            3.162,
                            "A",
                            () -> LimitedOutputs.heatingAmps(
                                    new ElectronicLimit(10, OptionalDouble.of(0.1), OptionalDouble.of(0.9))))),
            new Formula(
                    "fault-end-temperature",
                    "Conductor temperature after a short circuit",
                    "T = (b + T0) x exp(I^2 x t / (K x S)^2) - b",
                    Symbol.of(
                            """
                    T | conductor temperature at the end | °C
                    T0 | conductor temperature at the beginning | °C
                    I | current | A
                    t | time it lasts | s
                    K | 226 for copper | A s^0.5/mm²
                    S | copper area | mm²
                    b | 234.5 for copper | °C
                    """),
                    "Adiabatic: all heat stays in the copper. The time a conductor stands a short circuit, solved for the temperature.",
                    "IEC 60949:1988, clause 3; algebra",
                    "",
                    List.of("views/protection"),
                    new Worked(
                            "300 A through 2.5 mm² for 1 s, from 60 °C.",
                            "300^2 x 1 / (226 x 2.5)^2 = 0.28193; exp 1.3257; x 294.5 = 390.4; - 234.5 = 155.9 °C",
                            155.9,
                            "°C",
                            () -> org.ohmloom.heat.balance.Adiabatic.COPPER.endCelsius(2.5, 300, 60, 1))));

    private ProtectionFormulas() {}
}
