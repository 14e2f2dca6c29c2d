package org.ohmloom.signal.unit;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.notNegative;

import org.ohmloom.model.ComponentId;
import org.ohmloom.model.PinRole;

/**
 * One line of a sensor, load or relay that needs a pin of a control unit.
 *
 * @param component what it belongs to
 * @param terminal  which terminal of it
 * @param role      what the pin must be able to be
 * @param amps      current, A, 0 or more
 * @param switching whether it switches at a duty cycle
 */
public record Line(ComponentId component, String terminal, PinRole role, double amps, boolean switching) {

    public Line {
        notBlank(terminal, "terminal of a line of %s", component);
        notNegative(amps, "current of a line of %s", component);
    }

    /** How people write it: {@code B1.signal}. */
    public String text() {
        return component + "." + terminal;
    }
}
