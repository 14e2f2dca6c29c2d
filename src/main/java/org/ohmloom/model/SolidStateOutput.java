package org.ohmloom.model;

import static org.ohmloom.units.Require.positive;

import java.util.List;

/**
 * A stand-alone electronic switch between terminals {@code in} and {@code out}. Off unless the operating state puts
 * it on, at a duty.
 *
 * @param onOhms    resistance while on, ohm, more than 0
 * @param limitAmps most continuous current, A, more than 0
 */
public record SolidStateOutput(double onOhms, double limitAmps) implements Device {

    /** Terminal names. */
    public static final String IN = "in", OUT = "out";

    public SolidStateOutput {
        positive(onOhms, "on-state resistance");
        positive(limitAmps, "current limit of the output");
    }

    @Override
    public List<String> terminals() {
        return List.of(IN, OUT);
    }
}
