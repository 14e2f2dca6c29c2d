package org.ohmloom.solve.run;

import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.model.ComponentId;

/**
 * The supply of a load or control unit while something else starts.
 *
 * @param id            the load or control unit
 * @param controlUnit   whether it is a control unit
 * @param beforeVolts   voltage at its terminals before the start, V
 * @param lowestVolts   lowest voltage, V
 * @param lowestSeconds when that is, s
 * @param minimumVolts  least voltage it works at, V, if known
 * @param belowSeconds  time it gets less than that, s
 * @param belowAtEnd    whether it still does at the end of the run
 * @param holdSeconds   time its input capacitor carries its own draw from the voltage before to that minimum, s; 0 without
 * @param volts         voltage at each instant of the run, V
 */
public record SupplySag(
        ComponentId id,
        boolean controlUnit,
        double beforeVolts,
        double lowestVolts,
        double lowestSeconds,
        OptionalDouble minimumVolts,
        double belowSeconds,
        boolean belowAtEnd,
        double holdSeconds,
        List<Double> volts) {

    public SupplySag {
        volts = List.copyOf(volts);
    }

    /** Voltage lost to the start at the worst instant, V. */
    public double sagVolts() {
        return beforeVolts - lowestVolts;
    }

    /**
     * Whether the start takes it below the least voltage it works at, having had that before, for longer than its input
     * capacitor holds out.
     */
    public boolean isTooLow() {
        return minimumVolts.isPresent()
                && lowestVolts < minimumVolts.getAsDouble()
                && beforeVolts >= minimumVolts.getAsDouble()
                && (belowAtEnd || belowSeconds >= holdSeconds);
    }
}
