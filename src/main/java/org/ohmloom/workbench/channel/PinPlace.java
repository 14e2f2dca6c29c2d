package org.ohmloom.workbench.channel;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.Pin;
import org.ohmloom.signal.unit.ChannelProblem.UnitPin;

/**
 * A pin of a unit.
 *
 * @param unit     the unit
 * @param pin      the pin
 * @param cavity   where it lies in a connector, as {@code X5.12}
 * @param channels channels that have it as input, output, supply or return
 * @param wired    sensors, loads and relays a line of which is wired to it
 */
record PinPlace(Component unit, Pin pin, Optional<String> cavity, List<Channel> channels, SortedSet<String> wired) {
    PinPlace {
        channels = List.copyOf(channels);
        wired = Collections.unmodifiableSortedSet(new TreeSet<>(wired));
    }

    UnitPin at() {
        return new UnitPin(unit.id(), pin.name());
    }

    /** {@code U1.AN3}. */
    String text() {
        return unit.id() + "." + pin.name();
    }
}
