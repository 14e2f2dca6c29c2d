package org.ohmloom.manual.formula;

import java.util.List;
import org.ohmloom.ground.LoopInduction;

/** Fields and currents in loops of the return network. */
final class LoopFormulas {

    static final List<Formula> ALL = List.of(
            new Formula(
                    "loop-voltage",
                    "Voltage a field induces in a loop",
                    "V = 2 x pi x f x B x A",
                    Symbol.of(
                            """
                    V | voltage round the loop, RMS | V
                    f | frequency of the field | Hz
                    B | flux density at right angles to the loop, RMS | T
                    A | area of the loop | m²
                    """),
                    "A uniform field. The area is read from the layout.",
                    "Ott, Noise Reduction Techniques in Electronic Systems, 2nd edition, equation 2-8 (from memory)",
                    "",
                    List.of("views/returns-loops"),
                    new Worked(
                            "1000 Hz, 10 µT, 100 cm².",
                            "6.283 x 1000 x 1e-5 x 0.01 = 6.283e-4 V",
                            0.0006283,
                            "V",
                            () -> LoopInduction.volts(1000, 1e-5, 0.01))),
            new Formula(
                    "loop-current",
                    "Current a voltage drives round a loop",
                    "I = V / |R + j w L|",
                    Symbol.of(
                            """
                    I | current, RMS | A
                    V | voltage round the loop | V
                    R | resistance round it | ohm
                    w | 2 x pi x frequency | 1/s
                    L | inductance of the loop | H
                    """),
                    "Resistance and reactance stand at right angles.",
                    "Textbook",
                    "",
                    List.of("views/returns-loops"),
                    new Worked(
                            "1 mV round 10 mΩ and 2 µH at 1000 Hz.",
                            "w L = 6.283 x 1000 x 2e-6 = 0.01257 ohm; root of 0.01^2 + 0.01257^2 = 0.01606; 0.001 / 0.01606 = 0.06227 A",
                            0.06227,
                            "A",
                            () -> LoopInduction.amps(0.001, 0.01, 2e-6, 1000))),
            new Formula(
                    "pair-inductance",
                    "Inductance of two parallel wires",
                    "L = (mu0 / pi) x ln(2 x D / d) x l",
                    Symbol.of(
                            """
                    L | inductance there and back | H
                    D | distance of their centres | m
                    d | diameter of each conductor | m
                    l | length of the pair | m
                    """),
                    "Round wires; the field inside the conductors is left out.",
                    "Paul, Introduction to Electromagnetic Compatibility (from memory)",
                    "",
                    List.of("views/returns-loops"),
                    new Worked(
                            "D = 10 mm, d = 1 mm, l = 2 m.",
                            "ln 20 = 2.996; 4e-7 x 2.996 x 2 = 2.397e-6 H",
                            2.397e-06,
                            "H",
                            () -> LoopInduction.pairHenries(0.01, 0.001, 2))),
            new Formula(
                    "plane-inductance",
                    "Inductance of a wire above a plane",
                    "L = (mu0 / (2 x pi)) x ln(4 x h / d) x l",
                    Symbol.of(
                            """
                    L | inductance along the wire and back through the plane | H
                    h | height of the centre above the plane | m
                    d | diameter of the conductor | m
                    l | length | m
                    """),
                    "A wire along a chassis that is its return.",
                    "Paul, Introduction to Electromagnetic Compatibility (from memory)",
                    "",
                    List.of("views/returns-loops"),
                    new Worked(
                            "h = 10 mm, d = 1 mm, l = 1 m.",
                            "ln 40 = 3.689; 2e-7 x 3.689 = 7.378e-7 H",
                            7.378e-07,
                            "H",
                            () -> LoopInduction.abovePlaneHenries(0.01, 0.001, 1))));

    private LoopFormulas() {}
}
