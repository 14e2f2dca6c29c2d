package org.ohmloom.solve.charge;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.model.Battery;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;

/** A battery while a sequence runs: counts its charge and keeps what it did. */
final class BatteryTrace {
    private static final double SECONDS_PER_HOUR = 3600;
    private static final double SECONDS_PER_MINUTE = 60;

    private final ComponentId id;
    private final Battery battery;
    private final double chargeEfficiency;
    private final OptionalDouble untilVolts;
    private final double startFraction;
    private final List<ChargeSample> samples = new ArrayList<>();
    private double chargeFraction;
    private double amps;
    private double volts;
    private double drawnAmpHours;
    private double chargedAmpHours;
    private double lowestVolts = Double.POSITIVE_INFINITY;
    private OptionalDouble untilMinutes = OptionalDouble.empty();
    private OptionalDouble emptyMinutes = OptionalDouble.empty();

    BatteryTrace(
            ComponentId id, Battery battery, double startFraction, double chargeEfficiency, OptionalDouble untilVolts) {
        this.id = id;
        this.battery = battery;
        this.startFraction = startFraction;
        this.chargeFraction = startFraction;
        this.chargeEfficiency = chargeEfficiency;
        this.untilVolts = untilVolts;
    }

    ComponentId id() {
        return id;
    }

    double chargeFraction() {
        return chargeFraction;
    }

    /** Current it gives, A. */
    double amps() {
        return amps;
    }

    /** Voltage at its terminals, V. */
    double volts() {
        return volts;
    }

    /** Seconds in which its charge level moves by a share of its capacity; infinite without current. */
    double secondsFor(double shareFraction) {
        double hours = shareFraction * battery.capacityAmpHours() / Math.abs(amps);
        return amps == 0 ? Double.POSITIVE_INFINITY : hours * SECONDS_PER_HOUR;
    }

    /** Takes what a solution says of it, at a time from the beginning of the sequence. */
    void sample(double seconds, OperatingState state, double nowAmps, double nowVolts, boolean stepBegins) {
        double before = volts;
        amps = nowAmps;
        volts = nowVolts;
        lowestVolts = Math.min(lowestVolts, volts);
        if (untilVolts.isPresent() && untilMinutes.isEmpty() && state.mode() != EngineMode.CRANKING) {
            crossing(seconds, before, stepBegins);
        }
        samples.add(new ChargeSample(seconds, state.id(), amps, volts, chargeFraction));
    }

    /** Takes note that it is not connected. */
    void rest() {
        amps = 0;
    }

    /** When the voltage came down to the one asked about: within a step by a straight line between two samples. */
    private void crossing(double seconds, double before, boolean stepBegins) {
        double until = untilVolts.getAsDouble();
        if (volts > until) {
            return;
        }
        double at = seconds;
        if (!stepBegins && before > until) {
            double last = samples.get(samples.size() - 1).seconds();
            at = last + (seconds - last) * (before - until) / (before - volts);
        }
        untilMinutes = OptionalDouble.of(at / SECONDS_PER_MINUTE);
    }

    /** Counts the charge of a stretch that ends at a time, with the mean of the currents at its ends, A. */
    void count(double endSeconds, double stretchSeconds, double meanAmps) {
        double ampHours = meanAmps * stretchSeconds / SECONDS_PER_HOUR;
        double stored = ampHours >= 0 ? ampHours : ampHours * chargeEfficiency;
        double next = chargeFraction - stored / battery.capacityAmpHours();
        if (next <= 0 && chargeFraction > 0 && emptyMinutes.isEmpty()) {
            double share = chargeFraction / (chargeFraction - next);
            emptyMinutes = OptionalDouble.of((endSeconds - (1 - share) * stretchSeconds) / SECONDS_PER_MINUTE);
        }
        chargeFraction = Math.min(1, Math.max(0, next));
        drawnAmpHours += Math.max(0, ampHours);
        chargedAmpHours += Math.max(0, -ampHours);
    }

    /** The charge level after a stretch at its present current, 0 to 1. */
    double guessFraction(double stretchSeconds) {
        double ampHours = amps * stretchSeconds / SECONDS_PER_HOUR;
        double stored = ampHours >= 0 ? ampHours : ampHours * chargeEfficiency;
        return Math.min(1, Math.max(0, chargeFraction - stored / battery.capacityAmpHours()));
    }

    /** Charge it gave less charge it took so far, Ah. */
    double netAmpHours() {
        return drawnAmpHours - chargedAmpHours;
    }

    BatteryRun finish() {
        return new BatteryRun(
                id,
                battery.capacityAmpHours(),
                startFraction,
                chargeFraction,
                drawnAmpHours,
                chargedAmpHours,
                Double.isInfinite(lowestVolts) ? 0 : lowestVolts,
                untilMinutes,
                emptyMinutes,
                samples);
    }
}
