package org.ohmloom.size;

import static org.ohmloom.units.Require.notNegative;

import java.util.OptionalDouble;
import org.ohmloom.model.ComponentId;
import org.ohmloom.tables.Citation;
import org.ohmloom.words.Text;

/**
 * The rating chosen for a protective device, and why.
 *
 * @param device     the device
 * @param ratingAmps chosen rating of its series, A; empty when none fits between load and conductor
 * @param loadAmps   largest continuous current through it in any state, A
 * @param why        the calculation in words and numbers
 * @param citation   rule or table row it rests on
 */
public record DeviceChoice(
        ComponentId device, OptionalDouble ratingAmps, double loadAmps, Text why, Citation citation) {

    public DeviceChoice {
        notNegative(loadAmps, "load of protective device %s", device);
    }

    /** The calculation in words and numbers, in English. */
    public String reason() {
        return why.english();
    }
}
