package org.ohmloom.manual.formula;

import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.model.Draw;

/** What motors draw. */
final class MotorFormulas {

    static final List<Formula> ALL = List.of(new Formula(
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
                                    10, 80, 12, 1e-3, 2, Draw.MagnetMotor.Torque.CONSTANT, 0.3, OptionalDouble.empty())
                            .backVolts())));

    private MotorFormulas() {}
}
