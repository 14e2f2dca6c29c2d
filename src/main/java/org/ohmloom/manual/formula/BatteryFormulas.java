package org.ohmloom.manual.formula;

import java.util.List;
import org.ohmloom.solve.charge.LoadTabulation;
import org.ohmloom.solve.charge.Peukert;

/** How long a battery lasts and how far an alternator may be loaded. */
final class BatteryFormulas {

    static final List<Formula> ALL = List.of(
            new Formula(
                    "battery-hours",
                    "Hours a battery lasts at a steady current",
                    "t = H x (C / (I x H))^k",
                    Symbol.of(
                            """
                    t | hours from full to empty | h
                    H | hours the capacity was rated by | h
                    C | rated capacity | Ah
                    I | steady current | A
                    k | Peukert's exponent of the battery type |
                    """),
                    "Holds for steady discharge from full to empty only. Charge over changing currents is counted in plain ampere hours.",
                    "Peukert 1897; exponents by the table of battery types",
                    "",
                    List.of("views/charge"),
                    new Worked(
                            "100 Ah rated by 20 h, k = 1.2, 20 A.",
                            "100 / 400 = 0.25; 0.25^1.2 = 0.1895; x 20 = 3.789 h",
                            3.789,
                            "h",
                            () -> Peukert.hours(100, 20, 1.2, 20))),
            new Formula(
                    "peukert-exponent",
                    "Exponent from two tests",
                    "k = (ln t2 - ln t1) / (ln I1 - ln I2)",
                    Symbol.of(
                            """
                    k | Peukert's exponent |
                    I1, t1 | current and hours of the first test | A, h
                    I2, t2 | current and hours of the second test | A, h
                    """),
                    "From two discharges of one battery at steady currents.",
                    "Algebra from Peukert's law",
                    "",
                    List.of("views/charge"),
                    new Worked(
                            "5 A for 20 h, 25 A for 3 h.",
                            "ln 3 - ln 20 = -1.897; ln 5 - ln 25 = -1.609; ratio 1.179",
                            1.179,
                            "",
                            () -> Peukert.exponent(5, 20, 25, 3))),
            new Formula(
                    "reserve-capacity",
                    "Ampere hours of a reserve capacity",
                    "C = 25 A x t / 60",
                    Symbol.of(
                            """
                    C | charge at 25 A | Ah
                    t | reserve capacity | min
                    """),
                    "Reserve capacity is the minutes a battery gives 25 A at 25 °C.",
                    "SAE J537",
                    "",
                    List.of("lists/sources"),
                    new Worked("120 min.", "25 x 120 / 60 = 50 Ah", 50, "Ah", () -> Peukert.reserveAmpHours(120))),
            new Formula(
                    "alternator-share",
                    "Most continuous load of an alternator",
                    "I = 0.8 x Il",
                    Symbol.of(
                            """
                    I | most continuous load | A
                    Il | most the alternator gives | A
                    """),
                    "Leaves a fifth for charging the battery.",
                    "FAA AC 43.13-1B CHG 1 (2001), 11-35a",
                    "",
                    List.of("views/charge", "rules/alternator-reserve"),
                    new Worked(
                            "An alternator of 105 A.",
                            "0.8 x 105 = 84 A",
                            84,
                            "A",
                            () -> LoadTabulation.allowedAmps(105))),
            new Formula(
                    "battery-emf",
                    "Open-circuit voltage of a battery at a charge level",
                    "E = Ef x u(s) / u(100 %)",
                    Symbol.of(
                            """
                    E | open-circuit voltage at the charge level s | V
                    Ef | open-circuit voltage entered, of the full battery at 25 °C | V
                    u | rest voltage of a cell by the table of the battery's type, straight between its rows | V
                    s | charge level | %
                    """),
                    "Only the shape of the curve is taken from the table, so a full battery has what was entered. A battery without a type keeps its voltage at every charge level.",
                    "Common practice, no source; the rest voltages by [their table](../tables/battery-open-circuit.md)",
                    " full x ",
                    List.of("views/charge", "lists/sources"),
                    new Worked(
                            "12.8 V full, AGM, charged to 50 %.",
                            "2.030 / 2.140 = 0.9486; 12.8 x 0.9486 = 12.14 V",
                            12.14,
                            "V",
                            () -> WorkedSupply.emfVolts(12.8, "lead-acid-agm", 0.5))),
            new Formula(
                    "alternator-set-point",
                    "Voltage an alternator holds at its temperature",
                    "U = Us + k x (T - Ts)",
                    Symbol.of(
                            """
                    U | voltage the regulator holds | V
                    Us | set point entered | V
                    k | change with temperature, usually negative | V/K
                    T | temperature of the alternator in the state | °C
                    Ts | temperature the set point holds at; 25 where none is entered | °C
                    """),
                    "Never below half the set point entered. Where no temperature is entered for a state it is that of the zone. The voltage is held where the regulator senses, up to the most current the alternator gives.",
                    "Straight line by what the maker states of the regulator; common practice, no source",
                    " V/K x (",
                    List.of("lists/alternators", "views/charge"),
                    new Worked(
                            "14.4 V at 25 °C, -10 mV/K, at 80 °C.",
                            "80 - 25 = 55 K; -0.010 x 55 = -0.55 V; 14.4 - 0.55 = 13.85 V",
                            13.85,
                            "V",
                            () -> WorkedSupply.setPointVolts(14.4, -0.010, 80))));

    private BatteryFormulas() {}
}
