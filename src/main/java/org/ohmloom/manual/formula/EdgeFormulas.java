package org.ohmloom.manual.formula;

import java.util.List;
import org.ohmloom.ground.coupling.CouplingFormulas;

/** What a wire that switches puts onto one beside it. */
final class EdgeFormulas {

    static final List<Formula> ALL = List.of(
            new Formula(
                    "pair-capacitance",
                    "Capacitance of two parallel wires",
                    "C = 2 x pi x e / acosh((D^2 - a^2 - b^2) / (2 x a x b))",
                    Symbol.of(
                            """
                    C | capacitance of a metre | F/m
                    e | permittivity of what is between them; 8.854e-12 times its relative value | F/m
                    D | distance of their centres | m
                    a, b | radii of the two conductors | m
                    """),
                    "Exact for round wires in one medium.",
                    "Electrostatics",
                    "",
                    List.of("views/returns-coupling"),
                    new Worked(
                            "D = 2 mm, a = b = 0.5 mm, in air.",
                            "(4 - 0.25 - 0.25) / 0.5 = 7; acosh 7 = 2.634; 6.283 x 8.854e-12 / 2.634 = 2.112e-11 F/m",
                            2.112e-11,
                            "F/m",
                            () -> CouplingFormulas.pairFaradsPerMetre(0.002, 0.0005, 0.0005, 1))),
            new Formula(
                    "plane-capacitance",
                    "Capacitance of a wire over a plane",
                    "C = 2 x pi x e / acosh(h / r)",
                    Symbol.of(
                            """
                    C | capacitance of a metre | F/m
                    e | permittivity of what is between | F/m
                    h | height of the centre over the plane | m
                    r | radius of the conductor | m
                    """),
                    "The signal's capacitance to the chassis, which divides what comes over.",
                    "Electrostatics",
                    "",
                    List.of("views/returns-coupling"),
                    new Worked(
                            "h = 5 mm, r = 0.5 mm, in air.",
                            "acosh 10 = 2.993; 6.283 x 8.854e-12 / 2.993 = 1.859e-11 F/m",
                            1.859e-11,
                            "F/m",
                            () -> CouplingFormulas.planeFaradsPerMetre(0.005, 0.0005, 1))),
            new Formula(
                    "mutual-inductance",
                    "Mutual inductance of two wires over a plane",
                    "M = (mu0 / (4 x pi)) x ln(1 + 4 x h1 x h2 / s^2)",
                    Symbol.of(
                            """
                    M | mutual inductance of a metre | H/m
                    h1, h2 | heights over the plane | m
                    s | distance of their centres | m
                    """),
                    "0.1 ln(...) in microhenries for a metre.",
                    "Paul, Introduction to Electromagnetic Compatibility (from memory)",
                    "",
                    List.of("views/returns-coupling"),
                    new Worked(
                            "Both 10 mm high, 2 mm apart.",
                            "1 + 400 / 4 = 101; ln 101 = 4.615; 1e-7 x 4.615 = 4.615e-7 H/m",
                            4.615e-07,
                            "H/m",
                            () -> CouplingFormulas.mutualHenriesPerMetre(0.01, 0.01, 0.002))),
            new Formula(
                    "electric-coupling",
                    "Voltage an edge puts through a capacitance",
                    "V = U x C12 / (C12 + C2G) x (1 - exp(-n)) / n,   n = t / (R x (C12 + C2G))",
                    Symbol.of(
                            """
                    V | largest voltage on the signal | V
                    U | height of the edge | V
                    t | time of the edge | s
                    C12 | capacitance between the wires | F
                    C2G | capacitance of the signal to ground | F
                    R | resistance of the signal to ground | ohm
                    """),
                    "A slow edge gives R x C12 x U / t, a sudden one C12 / (C12 + C2G) of the edge.",
                    "Ott, Noise Reduction Techniques in Electronic Systems, 2nd edition, equations 2-3 and 2-5 (from memory)",
                    "",
                    List.of("views/returns-coupling", "rules/coupling-over-limit"),
                    new Worked(
                            "12 V in 1 µs, C12 = 20 pF, C2G = 80 pF, R = 1 kohm.",
                            "12 x 20/100 = 2.4 V; n = 1e-6 / 1e-7 = 10; (1 - 0.0000454) / 10 = 0.1; 2.4 x 0.1 = 0.24 V",
                            0.24,
                            "V",
                            () -> CouplingFormulas.capacitiveVolts(12, 1e-6, 20e-12, 80e-12, 1000))),
            new Formula(
                    "magnetic-coupling",
                    "Voltage a changing current induces",
                    "V = M x dI / dt",
                    Symbol.of(
                            """
                    V | voltage round the signal and its return | V
                    M | mutual inductance | H
                    dI | change of the current | A
                    dt | time it takes | s
                    """),
                    "A twisted pair takes most of it away, for it turns the loop round at every half lay.",
                    "Ott, Noise Reduction Techniques in Electronic Systems, 2nd edition, equation 2-9 in its form in time (from memory)",
                    "",
                    List.of("views/returns-coupling"),
                    new Worked(
                            "0.5 µH, 5 A in 10 µs.",
                            "0.5e-6 x 5 / 10e-6 = 0.25 V",
                            0.25,
                            "V",
                            () -> CouplingFormulas.inductiveVolts(0.5e-6, 5, 10e-6))),
            new Formula(
                    "edge-frequency",
                    "Frequency an edge reaches up to",
                    "f = 1 / (pi x t)",
                    Symbol.of(
                            """
                    f | frequency | Hz
                    t | time of the edge | s
                    """),
                    "Above it the spectrum of an edge falls twice as steeply.",
                    "Paul, Introduction to Electromagnetic Compatibility (from memory)",
                    "",
                    List.of("views/returns-coupling"),
                    new Worked(
                            "1 µs.",
                            "1 / (3.1416 x 1e-6) = 318 310 Hz",
                            318310,
                            "Hz",
                            () -> CouplingFormulas.edgeHertz(1e-6))),
            new Formula(
                    "shield-share",
                    "What a shield leaves of a magnetic disturbance",
                    "a = 1 / sqrt(1 + (w / wc)^2),   wc = Rs / Ls",
                    Symbol.of(
                            """
                    a | share left |
                    w | 2 x pi x frequency of the edge | 1/s
                    wc | cut-off of the shield | 1/s
                    Rs | resistance of the shield | ohm
                    Ls | inductance of the shield | H
                    """),
                    "For a shield grounded at both ends. Grounded at one end it does nothing against a magnetic field.",
                    "Ott, Noise Reduction Techniques in Electronic Systems, 2nd edition, chapter 2 (from memory)",
                    "",
                    List.of("views/returns-coupling"),
                    new Worked(
                            "10 kHz, Rs = 20 mohm, Ls = 1 µH.",
                            "w = 62 832; wc = 20 000; ratio 3.142; 1 / sqrt(1 + 9.870) = 0.3033",
                            0.3033,
                            "",
                            () -> CouplingFormulas.shieldShare(10_000, 0.02, 1e-6))));

    private EdgeFormulas() {}
}
