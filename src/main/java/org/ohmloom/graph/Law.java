package org.ohmloom.graph;

import static org.ohmloom.units.Require.finite;
import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;
import static org.ohmloom.units.Require.within;

/**
 * How the current of a branch and the voltage along it hang together. Everywhere, {@code amps} is positive from
 * {@code from} to {@code to} and {@code volts} is V(from) - V(to).
 */
public sealed interface Law {

    /** Conducts nothing in this operating state. */
    record Open() implements Law {}

    /**
     * volts = ohms x amps.
     *
     * @param ohms resistance, ohm, more than 0
     */
    record Resistance(double ohms) implements Law {
        public Resistance {
            positive(ohms, "resistance of a branch");
        }
    }

    /**
     * A resistance that conducts for a share of every period and is open for the rest: an output that switches.
     *
     * @param onOhms resistance while on, ohm, more than 0
     * @param pulse  when it is on
     */
    record SwitchedResistance(double onOhms, Pulse pulse) implements Law {
        public SwitchedResistance {
            positive(onOhms, "on-state resistance of a branch");
        }
    }

    /**
     * A load that a regulator of its own switches: its law while on, open for the rest of every period.
     *
     * @param law   the law while on, that of a load
     * @param pulse when it is on
     */
    record Cycled(Law law, Pulse pulse) implements Law {
        public Cycled {
            that(
                    !(law instanceof Cycled || law instanceof SwitchedResistance || law instanceof VoltageSource),
                    "%s cannot be the law of a load that cycles",
                    law);
        }
    }

    /**
     * A resistance with an inductance: volts = ohms x amps + henries x rise of amps in a second. Without anything that
     * switches it is its resistance.
     *
     * @param ohms    resistance, ohm, more than 0
     * @param henries inductance, H, more than 0
     */
    record Inductive(double ohms, double henries) implements Law {
        public Inductive {
            positive(ohms, "resistance of a branch");
            positive(henries, "inductance");
        }
    }

    /**
     * A permanent-magnet motor at its running point: volts = ohms x amps + emfVolts x n with n = speed over rated speed,
     * where the load on its shaft asks for a current: ratedAmps at any speed, or, as a fan or pump does, freeAmps +
     * (ratedAmps - freeAmps) x n^2. Below the voltage that turns it, it is its resistance. Its inductance keeps the
     * current, its inertia the speed within a short period.
     *
     * @param ohms         resistance of the winding, ohm, more than 0
     * @param henries      inductance of the winding, H, more than 0
     * @param emfVolts     counter-voltage at rated speed, V, 0 or more
     * @param ratedAmps    current at rated speed, A, more than 0
     * @param freeAmps     current without load, A, 0 to ratedAmps
     * @param speedSquared whether the torque grows with the square of the speed; otherwise it is the same at any speed
     * @param runUpSeconds time constant of running up, s, more than 0
     */
    record MagnetMotor(
            double ohms,
            double henries,
            double emfVolts,
            double ratedAmps,
            double freeAmps,
            boolean speedSquared,
            double runUpSeconds)
            implements Law {
        public MagnetMotor {
            positive(ohms, "resistance of a winding");
            positive(henries, "inductance of a winding");
            notNegative(emfVolts, "counter-voltage at rated speed");
            positive(ratedAmps, "rated current");
            within(freeAmps, 0, ratedAmps, "current without load");
            positive(runUpSeconds, "time constant of running up");
        }
    }

    /**
     * A capacitor so large that it carries every ripple that repeats often enough: its voltage stays the same through such a
     * period and its mean current is 0.
     *
     * @param leastHertz frequency from which it carries the ripple, Hz, more than 0
     */
    record SupplyCapacitor(double leastHertz) implements Law {
        public SupplyCapacitor {
            positive(leastHertz, "frequency");
        }
    }

    /**
     * A source with {@code from} its negative and {@code to} its positive terminal: V(to) - V(from) = emfVolts - ohms x
     * amps while 0 &lt;= amps &lt;= maximumAmps, emfVolts - chargeOhms x amps while minimumAmps &lt;= amps &lt; 0; at a limit
     * the current stays there and the voltage gives way (at the maximum it is lower than the law asks, at the minimum
     * higher).
     *
     * @param emfVolts    voltage without current, V, more than 0
     * @param ohms        internal resistance while it gives, ohm, 0 or more
     * @param minimumAmps least current it gives, A; 0 for a regulated source, minus what it accepts for a battery, minus
     *                    infinity for one that accepts any
     * @param maximumAmps most current it gives, A; plus infinity for a battery
     * @param chargeOhms  internal resistance while it takes, ohm, 0 or more
     */
    record VoltageSource(double emfVolts, double ohms, double minimumAmps, double maximumAmps, double chargeOhms)
            implements Law {
        public VoltageSource {
            positive(emfVolts, "electromotive force");
            notNegative(ohms, "internal resistance");
            notNegative(chargeOhms, "charge resistance");
            that(
                    minimumAmps < maximumAmps,
                    "current limits %s A and %s A are the wrong way round",
                    minimumAmps,
                    maximumAmps);
        }

        /** A source that takes current through the same resistance it gives it through. */
        public VoltageSource(double emfVolts, double ohms, double minimumAmps, double maximumAmps) {
            this(emfVolts, ohms, minimumAmps, maximumAmps, ohms);
        }

        /** A battery: no current limits. */
        public static VoltageSource battery(double emfVolts, double ohms) {
            return new VoltageSource(emfVolts, ohms, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        }

        /**
         * A battery that is charged by a law of its own.
         *
         * @param emfVolts       open-circuit voltage, V, more than 0
         * @param ohms           resistance while it gives, ohm, 0 or more
         * @param chargeOhms     resistance while it is charged, ohm, 0 or more
         * @param acceptanceAmps most current it is charged with, A, 0 or more; plus infinity for any
         */
        public static VoltageSource battery(double emfVolts, double ohms, double chargeOhms, double acceptanceAmps) {
            that(acceptanceAmps >= 0, "charge acceptance must be 0 or more, was %s", acceptanceAmps);
            return new VoltageSource(emfVolts, ohms, -acceptanceAmps, Double.POSITIVE_INFINITY, chargeOhms);
        }

        /** A regulated source: gives 0 to maximumAmps, takes nothing back. */
        public static VoltageSource regulated(double setPointVolts, double ohms, double maximumAmps) {
            return new VoltageSource(setPointVolts, ohms, 0, maximumAmps);
        }

        /** This source with another voltage without current, V, more than 0. */
        public VoltageSource withEmfVolts(double changed) {
            return new VoltageSource(changed, ohms, minimumAmps, maximumAmps, chargeOhms);
        }
    }

    /**
     * Takes a current whatever the voltage, as long as there is a positive voltage to take it from.
     *
     * @param amps the current, A, 0 or more
     */
    record ConstantCurrent(double amps) implements Law {
        public ConstantCurrent {
            notNegative(amps, "constant current");
        }
    }

    /**
     * volts x amps = watts.
     *
     * @param watts the power, W, more than 0
     */
    record ConstantPower(double watts) implements Law {
        public ConstantPower {
            positive(watts, "constant power");
        }
    }

    /**
     * amps = ratedAmps x (|volts| / ratedVolts)^exponent, with the sign of volts: a filament lamp.
     *
     * @param ratedAmps  current at the rated voltage, A, more than 0
     * @param ratedVolts rated voltage, V, more than 0
     * @param exponent   0 to 1
     */
    record PowerLaw(double ratedAmps, double ratedVolts, double exponent) implements Law {
        public PowerLaw {
            positive(ratedAmps, "rated current");
            positive(ratedVolts, "rated voltage");
            within(exponent, Double.MIN_NORMAL, 1, "exponent");
        }
    }

    /**
     * Conducts from {@code from} to {@code to} when volts exceeds a threshold: amps = (volts - forwardVolts) / ohms,
     * otherwise 0.
     *
     * @param forwardVolts threshold, V, 0 or more
     * @param ohms         slope resistance, ohm, more than 0
     */
    record Threshold(double forwardVolts, double ohms) implements Law {
        public Threshold {
            notNegative(forwardVolts, "threshold");
            positive(ohms, "slope resistance");
        }
    }

    /**
     * A resistance with a voltage against it that takes current one way only, as a motor in one moment of running up:
     * amps = (volts - counterVolts) / ohms where that is positive, otherwise 0.
     *
     * @param ohms         resistance, ohm, more than 0
     * @param counterVolts voltage against the current, V, 0 or more
     */
    record BackEmf(double ohms, double counterVolts) implements Law {
        public BackEmf {
            positive(ohms, "resistance of a branch");
            notNegative(counterVolts, "back electromotive force");
        }
    }

    /**
     * A relay contact that follows the solved voltage of its coil.
     *
     * @param coil          branch of the coil
     * @param pullInVolts   coil voltage, either sign, at which the relay pulls in, V
     * @param dropOutVolts  coil voltage below which it drops out, V
     * @param ohms          resistance while closed, ohm, more than 0
     * @param closedAtRest  true for a break contact
     */
    record CoilOperated(BranchId coil, double pullInVolts, double dropOutVolts, double ohms, boolean closedAtRest)
            implements Law {
        public CoilOperated {
            positive(pullInVolts, "pull-in voltage");
            positive(dropOutVolts, "drop-out voltage");
            positive(ohms, "contact resistance");
        }
    }

    /**
     * Takes the power its output gives divided by the efficiency: the input of a converter.
     *
     * @param output             branch of the output, a {@link VoltageSource}
     * @param efficiencyFraction more than 0, at most 1
     */
    record PowerOf(BranchId output, double efficiencyFraction) implements Law {
        public PowerOf {
            that(
                    efficiencyFraction > 0 && efficiencyFraction <= 1,
                    "efficiency %s is not in 0 to 1",
                    efficiencyFraction);
        }
    }

    /**
     * Takes the current its output gives: the input of a series-regulated reference supply.
     *
     * @param output branch of the output, a {@link VoltageSource}
     */
    record CurrentOf(BranchId output) implements Law {}

    /**
     * A fixed current whatever the voltage and its sign, for equipment that is not modelled.
     *
     * @param amps the current, A
     */
    record FixedCurrent(double amps) implements Law {
        public FixedCurrent {
            finite(amps, "fixed current");
        }
    }
}
