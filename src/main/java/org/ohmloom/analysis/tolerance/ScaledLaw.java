package org.ohmloom.analysis.tolerance;

import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;

/** The law of a branch that is a factor away from the drawn one. */
final class ScaledLaw {

    private ScaledLaw() {}

    /** Of a conductor or contact so many times the resistance, of a source the voltage, of a load the current. */
    static Law of(BranchKind.Part part, Law law, double factor) {
        return switch (part) {
            case SOURCE -> law instanceof Law.VoltageSource source
                    ? source.withEmfVolts(source.emfVolts() * factor)
                    : law;
            case LOAD -> load(law, factor);
            default -> resistance(law, factor);
        };
    }

    private static Law resistance(Law law, double factor) {
        if (law instanceof Law.Resistance plain) {
            return new Law.Resistance(plain.ohms() * factor);
        }
        if (law instanceof Law.Inductive coil) {
            return new Law.Inductive(coil.ohms() * factor, coil.henries());
        }
        return law;
    }

    /** Draws so many times the current at the same voltage; a motor against so many times the load on its shaft. */
    private static Law load(Law law, double factor) {
        if (law instanceof Law.Resistance || law instanceof Law.Inductive) {
            return resistance(law, 1 / factor);
        }
        if (law instanceof Law.BackEmf motor) {
            return new Law.BackEmf(motor.ohms() / factor, motor.counterVolts());
        }
        if (law instanceof Law.Cycled cycled) {
            return new Law.Cycled(load(cycled.law(), factor), cycled.pulse());
        }
        if (law instanceof Law.ConstantCurrent constant) {
            return new Law.ConstantCurrent(constant.amps() * factor);
        }
        if (law instanceof Law.ConstantPower constant) {
            return new Law.ConstantPower(constant.watts() * factor);
        }
        if (law instanceof Law.PowerLaw lamp) {
            return new Law.PowerLaw(lamp.ratedAmps() * factor, lamp.ratedVolts(), lamp.exponent());
        }
        if (law instanceof Law.MagnetMotor motor) {
            return new Law.MagnetMotor(
                    motor.ohms(),
                    motor.henries(),
                    motor.emfVolts(),
                    motor.ratedAmps() * factor,
                    motor.freeAmps() * factor,
                    motor.speedSquared(),
                    motor.runUpSeconds());
        }
        return law;
    }
}
