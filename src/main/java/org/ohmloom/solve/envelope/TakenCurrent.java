package org.ohmloom.solve.envelope;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.ohmloom.graph.Law;
import org.ohmloom.model.Draw;

/**
 * The current something takes in the on-state, as a function of its voltage: always the same, rising with the voltage, or
 * falling with it because its power is held.
 */
interface TakenCurrent {
    /** How the current goes with the voltage. */
    enum Kind {
        CONSTANT,
        RISING,
        POWER
    }

    Kind kind();

    /** Current at a voltage in V, A; at 0 V and below 0 A, but for a constant current. */
    double amps(double volts);

    /** A current that stays. */
    static TakenCurrent constant(double amps) {
        return of(Kind.CONSTANT, volts -> amps);
    }

    /** A resistance with a counter-voltage in V. */
    static TakenCurrent resistance(double ohms, double counterVolts) {
        return of(Kind.RISING, volts -> Math.max(0, (volts - counterVolts) / ohms));
    }

    /** A power in W. */
    static TakenCurrent power(double watts) {
        return of(Kind.POWER, volts -> volts > 0 ? watts / volts : Double.POSITIVE_INFINITY);
    }

    /** By a law of the network; empty for one this study does not know. */
    static Optional<TakenCurrent> of(Law law) {
        if (law instanceof Law.Resistance resistance) {
            return Optional.of(resistance(resistance.ohms(), 0));
        }
        if (law instanceof Law.SwitchedResistance switched) {
            return Optional.of(resistance(switched.onOhms(), 0));
        }
        if (law instanceof Law.Cycled cycled) {
            return of(cycled.law());
        }
        if (law instanceof Law.Inductive coil) {
            return Optional.of(resistance(coil.ohms(), 0));
        }
        if (law instanceof Law.BackEmf motor) {
            return Optional.of(resistance(motor.ohms(), motor.counterVolts()));
        }
        if (law instanceof Law.ConstantCurrent current) {
            return Optional.of(constant(current.amps()));
        }
        if (law instanceof Law.FixedCurrent current) {
            return Optional.of(constant(current.amps()));
        }
        if (law instanceof Law.ConstantPower power) {
            return Optional.of(power(power.watts()));
        }
        if (law instanceof Law.PowerLaw lamp) {
            return Optional.of(of(
                    Kind.RISING,
                    volts -> volts > 0 ? lamp.ratedAmps() * Math.pow(volts / lamp.ratedVolts(), lamp.exponent()) : 0));
        }
        return Optional.empty();
    }

    /** By what a load draws when its law in the network is one this study does not know; empty for other draws. */
    static Optional<TakenCurrent> of(Draw draw) {
        if (draw instanceof Draw.Inductive inductive) {
            return Optional.of(resistance(inductive.resistanceOhms(), 0));
        }
        if (draw instanceof Draw.MagnetMotor motor) {
            return Optional.of(
                    motor.torque() == Draw.MagnetMotor.Torque.CONSTANT
                            ? constant(motor.ratedAmps())
                            : of(Kind.RISING, volts -> fanAmps(motor, volts)));
        }
        return Optional.empty();
    }

    /**
     * A fan or pump on a magnet motor: volts = R I + E0 n with I = free + (rated - free) n^2, n the speed over the rated
     * speed; below the voltage that overcomes the free torque it stands still.
     */
    private static double fanAmps(Draw.MagnetMotor motor, double volts) {
        double ohms = motor.windingOhms();
        double counterVolts = motor.backVolts();
        double perSquareAmps = motor.ratedAmps() - motor.freeAmps();
        double left = volts - ohms * motor.freeAmps();
        if (left <= 0) {
            return Math.max(0, volts / ohms);
        }
        double squareVolts = ohms * perSquareAmps;
        double speedRatio = squareVolts > 0
                ? (Math.sqrt(counterVolts * counterVolts + 4 * squareVolts * left) - counterVolts) / (2 * squareVolts)
                : left / counterVolts;
        return motor.freeAmps() + perSquareAmps * speedRatio * speedRatio;
    }

    private static TakenCurrent of(Kind kind, DoubleUnaryOperator amps) {
        return new TakenCurrent() {
            @Override
            public Kind kind() {
                return kind;
            }

            @Override
            public double amps(double volts) {
                return amps.applyAsDouble(volts);
            }
        };
    }
}
