package org.ohmloom.model;

import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.OptionalDouble;

/**
 * A load that switches itself on and off: slowly, as a thermostat does, or for a while now and then.
 *
 * @param periodSeconds time from one switching on to the next, s, more than 0
 * @param onSeconds     time it stays on, s, more than 0 and at most the period: an intermittent load; empty means the duty of the
 *                      operating state decides: slow cycling
 */
public record Cycle(double periodSeconds, OptionalDouble onSeconds) {

    public Cycle {
        positive(periodSeconds, "period of a cycling load");
        onSeconds.ifPresent(value -> that(
                value > 0 && value <= periodSeconds,
                "on-time of a cycling load must be more than 0 and at most its period %s s, was %s",
                periodSeconds,
                value));
    }
}
