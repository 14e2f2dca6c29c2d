package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How an output switches.
 *
 * @param frequencyHertz  switching frequency, Hz, more than 0; below 1 Hz for slow cycling
 * @param clock           outputs that name the same clock switch in step; empty means the clock of its control unit, or one of its
 *                        own for a stand-alone output
 * @param phaseFraction   begin of its on-time after the begin of the clock's period, as a share of the period, 0 to below 1;
 *                        empty means 0
 * @param freewheel       where the current of an inductive load goes when it switches off
 * @param diodeVolts      forward drop of its freewheel diode, V, 0 or more; empty takes the usual one
 * @param clamp           the clamp of {@link Freewheel#ACTIVE_CLAMP}; needed there
 * @param supplyCapacitor whether a capacitor at its supply carries the ripple, so that its feed carries the mean
 * @param limit           its electronic current limit, if it has one
 * @param edgeSeconds     time its voltage takes to switch over, s, more than 0, if known
 */
public record Driver(
        double frequencyHertz,
        Optional<String> clock,
        OptionalDouble phaseFraction,
        Freewheel freewheel,
        OptionalDouble diodeVolts,
        Optional<Clamp> clamp,
        boolean supplyCapacitor,
        Optional<ElectronicLimit> limit,
        OptionalDouble edgeSeconds) {

    /** Where the current of an inductive load goes when its output switches off. */
    public enum Freewheel {
        /** Nowhere in the output; a diode at the load, if any, is the load's. */
        NONE,
        /** Through a diode to the supply of the output: from a low-side output. */
        DRIVER_SUPPLY,
        /** Through a diode from the ground of the output: into a high-side output. */
        DRIVER_GROUND,
        /** Through the output itself, which holds a clamp voltage until the current is gone. */
        ACTIVE_CLAMP
    }

    /**
     * An active clamp.
     *
     * @param clampVolts  voltage across the output while it clamps, V, more than 0
     * @param pulseJoules most energy of one pulse, J, more than 0, if known
     * @param meanWatts   most mean power of clamping, W, more than 0, if known
     */
    public record Clamp(double clampVolts, OptionalDouble pulseJoules, OptionalDouble meanWatts) {
        public Clamp {
            positive(clampVolts, "clamp voltage");
            pulseJoules.ifPresent(value -> positive(value, "clamp energy"));
            meanWatts.ifPresent(value -> positive(value, "clamp power"));
        }
    }

    public Driver {
        positive(frequencyHertz, "switching frequency");
        clock.ifPresent(value -> notBlank(value, "clock of an output"));
        phaseFraction.ifPresent(
                value -> that(value >= 0 && value < 1, "phase of an output must be from 0 to below 1, was %s", value));
        diodeVolts.ifPresent(value -> notNegative(value, "forward drop of a freewheel diode"));
        edgeSeconds.ifPresent(value -> positive(value, "time of an edge"));
        that(
                clamp.isPresent() == (freewheel == Freewheel.ACTIVE_CLAMP),
                "an output has a clamp exactly when its freewheel is an active clamp");
    }

    /** An output that switches at a frequency on a clock of its own; a diode at the load is the load's. */
    public static Driver of(double frequencyHertz) {
        return new Driver(
                frequencyHertz,
                Optional.empty(),
                OptionalDouble.empty(),
                Freewheel.NONE,
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                OptionalDouble.empty());
    }

    /** This output with edges that take a time, s, more than 0; empty when not known. */
    public Driver withEdgeSeconds(OptionalDouble changed) {
        return new Driver(
                frequencyHertz, clock, phaseFraction, freewheel, diodeVolts, clamp, supplyCapacitor, limit, changed);
    }

    /** This output with its freewheel diode elsewhere; not for an active clamp. */
    public Driver withFreewheel(Freewheel changed) {
        return new Driver(
                frequencyHertz,
                clock,
                phaseFraction,
                changed,
                diodeVolts,
                Optional.empty(),
                supplyCapacitor,
                limit,
                edgeSeconds);
    }

    /** This output on a clock, beginning at a share of its period, 0 to below 1. */
    public Driver onClock(String name, double phaseFraction) {
        return new Driver(
                frequencyHertz,
                Optional.of(name),
                OptionalDouble.of(phaseFraction),
                freewheel,
                diodeVolts,
                clamp,
                supplyCapacitor,
                limit,
                edgeSeconds);
    }
}
