package org.ohmloom.model;

import static org.ohmloom.units.Require.positive;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A stand-alone electronic switch between terminals {@code in} and {@code out}. Off unless the operating state puts
 * it on, at a duty. One whose freewheel diode goes to its supply or its ground has a third terminal {@code fw} for that
 * rail: the diode of a low-side output goes from {@code in} to {@code fw}, that of a high-side output from {@code fw} to
 * {@code out}.
 *
 * @param onOhms    resistance while on, ohm, more than 0
 * @param limitAmps most continuous current, A, more than 0
 * @param driver    how it switches, if known
 * @param ratedVolts highest system voltage it is made for, V, more than 0, if known
 */
public record SolidStateOutput(double onOhms, double limitAmps, Optional<Driver> driver, OptionalDouble ratedVolts)
        implements Device {

    /** Terminal names. */
    public static final String IN = "in", OUT = "out", FREEWHEEL = "fw";

    public SolidStateOutput {
        positive(onOhms, "on-state resistance");
        positive(limitAmps, "current limit of the output");
        ratedVolts.ifPresent(value -> positive(value, "voltage rating of the output"));
    }

    /** An output of which nothing is known about how it switches. */
    public SolidStateOutput(double onOhms, double limitAmps) {
        this(onOhms, limitAmps, Optional.empty(), OptionalDouble.empty());
    }

    /** Whether its freewheel diode goes to a rail of its own. */
    public boolean hasFreewheelTerminal() {
        return driver.map(Driver::freewheel)
                .filter(where -> where == Driver.Freewheel.DRIVER_SUPPLY || where == Driver.Freewheel.DRIVER_GROUND)
                .isPresent();
    }

    @Override
    public List<String> terminals() {
        return hasFreewheelTerminal() ? List.of(IN, OUT, FREEWHEEL) : List.of(IN, OUT);
    }
}
