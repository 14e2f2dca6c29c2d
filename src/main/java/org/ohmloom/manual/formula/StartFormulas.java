package org.ohmloom.manual.formula;

import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.model.Draw;

/** What motors and input capacitors draw while they start. */
final class StartFormulas {

    static final List<Formula> ALL = List.of(
            new Formula(
                    "motor-voltage",
                    "Voltage a running motor sets against the supply",
                    "E = Vr - R x Ir,   R = Vr / Is",
                    Symbol.of(
                            """
                    E | back electromotive force at the rated speed | V
                    Vr | rated voltage | V
                    R | resistance of winding and brushes | ohm
                    Ir | running current | A
                    Is | current at standstill | A
                    """),
                    "For permanent magnets. While it runs up with the speed n, as a share of the rated speed, it draws I = (V - E x n) / R, and dn/dt = R / (E x tau) x (I - I(n)) with its time constant tau and the current I(n) that what it drives takes at that speed.",
                    "Textbook: direct-current machine with constant excitation",
                    "dn/dt = R / (E x tau) x (I - I(n))",
                    List.of("views/start-up", "lists/loads"),
                    new Worked(
                            "12 V, 10 A running, 80 A at standstill.",
                            "12 / 80 = 0.15 ohm; 12 - 0.15 x 10 = 10.5 V",
                            10.5,
                            "V",
                            () -> new Draw.MagnetMotor(
                                            10,
                                            80,
                                            12,
                                            1e-3,
                                            2,
                                            Draw.MagnetMotor.Torque.CONSTANT,
                                            0.3,
                                            OptionalDouble.empty())
                                    .backVolts())),
            new Formula(
                    "input-capacitor",
                    "Current into an input capacitor that fills",
                    "dVc/dt = I / C,   I = (V - Vc) / R",
                    Symbol.of(
                            """
                    Vc | voltage of the capacitor, 0 at first | V
                    t | time | s
                    I | current into it | A
                    C | its capacitance | F
                    V | voltage at the terminals of the control unit | V
                    R | resistance in series with it, inside the unit | ohm
                    """),
                    "Behind a feed of the resistance Rf from a source of the voltage E this is I = E / (R + Rf) x exp(-t / tau) with tau = (R + Rf) x C. It counts as full once 0.2 % of the first current is left; what it gives and takes as the supply moves later is left out, which is on the safe side for the lowest voltage.",
                    "Textbook: charging through a resistance",
                    "dVc/dt = I / C, I = (V - Vc) / R",
                    List.of("views/start-up", "lists/components"),
                    new Worked(
                            "The first current: 12 V, 0.3 ohm of source and feed, 2 mF behind 0.1 ohm.",
                            "Vc = 0: 12 / (0.1 + 0.3) = 30 A, falling with 0.4 x 0.002 = 0.8 ms",
                            30,
                            "A",
                            () -> WorkedSupply.firstAmps(12, 0.3, 0.1, 2e-3))));

    private StartFormulas() {}
}
