package org.ohmloom.workbench.channel;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.PinRole;
import org.ohmloom.signal.unit.ChannelProblem.UnitPin;
import org.ohmloom.signal.unit.Line;

/**
 * What a sensor, load or relay needs of pins.
 *
 * @param component the sensor, load or relay
 * @param lines     its lines that need a pin; none when all of them are joined to something else
 * @param channel   its channel in the plan of a unit, if it has one
 * @param at        input or output of that channel
 * @param wired     whether wires join what is read or switched to something already
 * @param wiredTo   the pin of a unit they join it to, if it is one
 */
record PinNeed(
        Component component,
        List<Line> lines,
        Optional<Channel> channel,
        Optional<UnitPin> at,
        boolean wired,
        Optional<UnitPin> wiredTo) {
    PinNeed {
        lines = List.copyOf(lines);
    }

    String id() {
        return component.id().value();
    }

    /** The line that is read or switched. */
    Optional<Line> mainLine() {
        return lines.stream()
                .filter(line -> line.role().isInput() || line.role().isOutput())
                .findFirst();
    }

    /** Whether it needs a pin of that role too. */
    boolean needs(PinRole role) {
        return lines.stream().anyMatch(line -> line.role() == role);
    }

    boolean isLocked() {
        return channel.filter(Channel::locked).isPresent();
    }
}
