package org.ohmloom.model;

import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.OptionalDouble;

/** How the current of a load depends on the voltage at its terminals; every rating keeps the voltage it was given at. */
public sealed interface Draw
        permits Draw.Resistive,
                Draw.ConstantCurrent,
                Draw.ConstantPower,
                Draw.Motor,
                Draw.Lamp,
                Draw.Inductive,
                Draw.MagnetMotor {

    /** Current at the voltage the rating was given at, A. */
    double ratedAmps();

    /** Voltage the rating was given at, V. */
    double ratedVolts();

    /** This draw scaled so that its rated current is the given one, A, more than 0; used when a person types a current. */
    Draw withRatedAmps(double amps);

    /**
     * A constant resistance, as a heater: ratedVolts / ratedAmps.
     *
     * @param ratedAmps  current at the rated voltage, A, more than 0
     * @param ratedVolts voltage the current was given at, V, more than 0
     */
    record Resistive(double ratedAmps, double ratedVolts) implements Draw {
        public Resistive {
            positive(ratedAmps, "rated current");
            positive(ratedVolts, "rated voltage");
        }

        /** The resistance, ohm. */
        public double resistanceOhms() {
            return ratedVolts / ratedAmps;
        }

        @Override
        public Resistive withRatedAmps(double amps) {
            return new Resistive(amps, ratedVolts);
        }
    }

    /**
     * A current that does not depend on the voltage.
     *
     * @param ratedAmps  the current, A, 0 or more
     * @param ratedVolts voltage the current was given at, V, more than 0
     */
    record ConstantCurrent(double ratedAmps, double ratedVolts) implements Draw {
        public ConstantCurrent {
            notNegative(ratedAmps, "rated current");
            positive(ratedVolts, "rated voltage");
        }

        @Override
        public ConstantCurrent withRatedAmps(double amps) {
            return new ConstantCurrent(amps, ratedVolts);
        }
    }

    /**
     * A power that does not depend on the voltage: the current rises as the voltage falls.
     *
     * @param ratedWatts   the power, W, more than 0
     * @param ratedVolts   voltage the rating was given at, V, more than 0
     */
    record ConstantPower(double ratedWatts, double ratedVolts) implements Draw {
        public ConstantPower {
            positive(ratedWatts, "rated power");
            positive(ratedVolts, "rated voltage");
        }

        @Override
        public double ratedAmps() {
            return ratedWatts / ratedVolts;
        }

        @Override
        public ConstantPower withRatedAmps(double amps) {
            return new ConstantPower(amps * ratedVolts, ratedVolts);
        }
    }

    /**
     * A motor: its running current is taken as constant; while it starts it is the resistance ratedVolts / startAmps.
     *
     * @param ratedAmps  running current at the rated voltage, A, more than 0
     * @param startAmps  current at standstill at the rated voltage, A, at least the running current
     * @param ratedVolts voltage the currents were given at, V, more than 0
     */
    record Motor(double ratedAmps, double startAmps, double ratedVolts) implements Draw {
        public Motor {
            positive(ratedAmps, "running current");
            positive(ratedVolts, "rated voltage");
            that(
                    startAmps >= ratedAmps && Double.isFinite(startAmps),
                    "start current %s A must not be below the running current %s A",
                    startAmps,
                    ratedAmps);
        }

        /** Resistance at standstill, ohm. */
        public double standstillOhms() {
            return ratedVolts / startAmps;
        }

        @Override
        public Motor withRatedAmps(double amps) {
            return new Motor(amps, startAmps * amps / ratedAmps, ratedVolts);
        }
    }

    /**
     * A filament lamp: its current follows a power of the voltage, I = ratedAmps x (V / ratedVolts)^exponent.
     *
     * @param ratedWatts power at the rated voltage, W, more than 0
     * @param ratedVolts voltage the power was given at, V, more than 0
     */
    record Lamp(double ratedWatts, double ratedVolts) implements Draw {

        /**
         * Exponent of the current of a tungsten filament over its voltage. From memory: the usual lighting figure, 0.55
         * near the rated voltage.
         */
        public static final double CURRENT_EXPONENT = 0.55;

        public Lamp {
            positive(ratedWatts, "rated power");
            positive(ratedVolts, "rated voltage");
        }

        @Override
        public double ratedAmps() {
            return ratedWatts / ratedVolts;
        }

        @Override
        public Lamp withRatedAmps(double amps) {
            return new Lamp(amps * ratedVolts, ratedVolts);
        }
    }

    /**
     * A resistance with an inductance, as a solenoid or a valve: R = ratedVolts / ratedAmps.
     *
     * @param ratedAmps         steady current at the rated voltage, A, more than 0
     * @param ratedVolts        voltage the current was given at, V, more than 0
     * @param inductanceHenries inductance, H, more than 0
     */
    record Inductive(double ratedAmps, double ratedVolts, double inductanceHenries) implements Draw {
        public Inductive {
            positive(ratedAmps, "rated current");
            positive(ratedVolts, "rated voltage");
            positive(inductanceHenries, "inductance");
        }

        /** The resistance, ohm. */
        public double resistanceOhms() {
            return ratedVolts / ratedAmps;
        }

        @Override
        public Inductive withRatedAmps(double amps) {
            return new Inductive(amps, ratedVolts, inductanceHenries);
        }
    }

    /**
     * A permanent-magnet motor: V = R I + E n with R = ratedVolts / startAmps, n the speed as a share of the rated speed
     * and E = ratedVolts - R ratedAmps the back electromotive force there.
     *
     * @param ratedAmps         running current at the rated voltage, A, more than 0
     * @param startAmps         current at standstill at the rated voltage, A, more than the running current
     * @param ratedVolts        voltage the currents were given at, V, more than 0
     * @param inductanceHenries inductance of the winding, H, more than 0
     * @param freeAmps          current without load, A, 0 or more and below the running current
     * @param torque            how the torque of what it drives depends on speed
     * @param startSeconds      time constant of running up, s, more than 0
     * @param ratedRpm          speed at the rated point, revolutions per minute, more than 0, if known
     */
    record MagnetMotor(
            double ratedAmps,
            double startAmps,
            double ratedVolts,
            double inductanceHenries,
            double freeAmps,
            Torque torque,
            double startSeconds,
            OptionalDouble ratedRpm)
            implements Draw {

        /** How the torque of what a motor drives depends on its speed. */
        public enum Torque {
            /** The same at every speed: a winch, a piston or gear pump against a pressure. */
            CONSTANT,
            /** With the square of the speed: a fan or a centrifugal pump. */
            SPEED_SQUARED
        }

        public MagnetMotor {
            positive(ratedAmps, "running current");
            positive(ratedVolts, "rated voltage");
            that(
                    startAmps > ratedAmps && Double.isFinite(startAmps),
                    "start current %s A must be above the running current %s A",
                    startAmps,
                    ratedAmps);
            positive(inductanceHenries, "inductance");
            that(
                    freeAmps >= 0 && freeAmps < ratedAmps,
                    "current without load %s A must be 0 or more and below the running current %s A",
                    freeAmps,
                    ratedAmps);
            positive(startSeconds, "time constant of running up");
            ratedRpm.ifPresent(value -> positive(value, "rated speed"));
        }

        /** Resistance of the winding, ohm. */
        public double windingOhms() {
            return ratedVolts / startAmps;
        }

        /** Back electromotive force at the rated speed, V. */
        public double backVolts() {
            return ratedVolts - windingOhms() * ratedAmps;
        }

        @Override
        public MagnetMotor withRatedAmps(double amps) {
            double ratio = amps / ratedAmps;
            return new MagnetMotor(
                    amps,
                    startAmps * ratio,
                    ratedVolts,
                    inductanceHenries / ratio,
                    freeAmps * ratio,
                    torque,
                    startSeconds,
                    ratedRpm);
        }
    }
}
