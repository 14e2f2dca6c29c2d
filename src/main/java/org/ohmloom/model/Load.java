package org.ohmloom.model;

import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something that uses power between terminals {@code +} and {@code -}.
 *
 * @param draw             how its current depends on its voltage
 * @param control          whether it draws whenever it is fed, or only when the operating state asks it on
 * @param allowedDropVolts most voltage its feed and return may lose together, V, more than 0; when empty the
 *                         harness's {@link DesignRules} decide
 * @param diodeVolts       forward drop of a freewheel diode across its terminals, V, 0 or more; empty when it has none
 * @param cycle            how it switches itself, if it does
 * @param inrush           its current when it is switched on, if more than its running current
 * @param minimumVolts     least voltage it works at, V, more than 0, if known
 */
public record Load(
        Draw draw,
        Control control,
        OptionalDouble allowedDropVolts,
        OptionalDouble diodeVolts,
        Optional<Cycle> cycle,
        Optional<Inrush> inrush,
        OptionalDouble minimumVolts)
        implements Device {

    /** What decides whether a fed load draws. */
    public enum Control {
        /** Draws whenever voltage is on its terminals, as a lamp does. */
        FEED,
        /** Fed all the time, draws only when commanded on, as a fan with a command input does. */
        COMMAND
    }

    public Load {
        allowedDropVolts.ifPresent(value -> positive(value, "allowed voltage drop"));
        diodeVolts.ifPresent(value -> notNegative(value, "forward drop of a freewheel diode"));
        minimumVolts.ifPresent(value -> positive(value, "least voltage of a load"));
    }

    /** A load without freewheel diode, cycle, inrush or least voltage. */
    public Load(Draw draw, Control control, OptionalDouble allowedDropVolts) {
        this(
                draw,
                control,
                allowedDropVolts,
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty());
    }

    /** A load that draws whenever it is fed, its drop judged by the harness's rules. */
    public static Load of(Draw draw) {
        return new Load(draw, Control.FEED, OptionalDouble.empty());
    }

    @Override
    public List<String> terminals() {
        return List.of(POSITIVE, NEGATIVE);
    }

    /** This load with another draw. */
    public Load withDraw(Draw changed) {
        return new Load(changed, control, allowedDropVolts, diodeVolts, cycle, inrush, minimumVolts);
    }
}
