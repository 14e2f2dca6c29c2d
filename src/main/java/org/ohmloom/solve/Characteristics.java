package org.ohmloom.solve;

import org.ohmloom.graph.Branch;
import org.ohmloom.graph.Law;

/** Makes the characteristic of each branch in one stretch of the period. */
final class Characteristics {

    private Characteristics() {}

    /** The characteristics of a circuit's branches, given what the outputs they feed give. */
    static Characteristic[] of(Circuit circuit, Period period, Outputs outputs) {
        return circuit.branches().stream()
                .map(Branch::law)
                .map(law -> of(law, period, outputs))
                .toArray(Characteristic[]::new);
    }

    /** The characteristic of one law. */
    static Characteristic of(Law law, Period period, Outputs outputs) {
        if (law instanceof Law.Resistance resistance) {
            return new Ohmic(resistance.ohms());
        }
        if (law instanceof Law.SwitchedResistance switched) {
            return period.hasOn(switched.dutyFraction()) ? new Ohmic(switched.onOhms()) : Blocked.BLOCKED;
        }
        if (law instanceof Law.VoltageSource source) {
            return LimitedSource.of(source);
        }
        if (law instanceof Law.ConstantCurrent current) {
            return new DrawnCurrent(current.amps());
        }
        if (law instanceof Law.ConstantPower power) {
            return DrawnPower.of(power.watts());
        }
        if (law instanceof Law.PowerLaw lamp) {
            return new Lamp(lamp.ratedAmps(), lamp.ratedVolts(), lamp.exponent());
        }
        if (law instanceof Law.Threshold diode) {
            return new Rectifier(diode.forwardVolts(), diode.ohms());
        }
        if (law instanceof Law.BackEmf motor) {
            return new Rectifier(motor.counterVolts(), motor.ohms());
        }
        if (law instanceof Law.PowerOf input) {
            double watts = outputs.of(input.output()).watts() / input.efficiencyFraction();
            return watts > 0 ? DrawnPower.of(watts) : Asleep.ASLEEP;
        }
        if (law instanceof Law.CurrentOf input) {
            return new DrawnCurrent(outputs.of(input.output()).amps());
        }
        if (law instanceof Law.FixedCurrent current) {
            return new ForcedCurrent(current.amps());
        }
        return Blocked.BLOCKED;
    }
}
