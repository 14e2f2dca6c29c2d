package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.List;

/**
 * Pins of a control unit that share a limit of current: outputs on one driver, reference supplies from one regulator.
 *
 * @param name      what people call it
 * @param pins      names of the pins, at least one, each once
 * @param limitAmps most current of all of them together, A, more than 0
 */
public record PinGroup(String name, List<String> pins, double limitAmps) {

    public PinGroup {
        notBlank(name, "name of a group of pins");
        pins = List.copyOf(pins);
        that(!pins.isEmpty(), "group of pins %s holds no pin", name);
        that(pins.stream().distinct().count() == pins.size(), "group of pins %s names a pin twice", name);
        positive(limitAmps, "current limit of the group of pins %s", name);
    }
}
