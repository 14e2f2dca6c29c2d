package org.ohmloom.edit;

import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;

/**
 * Changes one channel in the plan of a unit; the others stay as they are by then.
 *
 * @param label   what that does
 * @param unit    the unit
 * @param name    what the channel is called before
 * @param changed the channel afterwards
 */
public record ChangeChannel(String label, ComponentId unit, String name, Channel changed) implements Edit {

    @Override
    public Harness apply(Harness before) {
        Component now = before.components().get(unit);
        ControlUnit device = (ControlUnit) now.device();
        ControlUnit other = device.withChannels(device.channels().stream()
                .map(each -> each.name().equals(name) ? changed : each)
                .toList());
        return other.equals(device) ? before : before.with(now.withDevice(other));
    }
}
