package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;

/**
 * Changes one channel in the plan of a unit; the others stay as they are by then. Messages of data buses that carry it follow its name.
 *
 * @param label   what that does
 * @param unit    the unit
 * @param name    what the channel is called before
 * @param changed the channel afterwards
 */
public record ChangeChannel(Text label, ComponentId unit, String name, Channel changed) implements Edit {

    @Override
    public Harness apply(Harness before) {
        Component now = before.components().get(unit);
        ControlUnit device = (ControlUnit) now.device();
        ControlUnit other = device.withChannels(device.channels().stream()
                .map(each -> each.name().equals(name) ? changed : each)
                .toList());
        if (other.equals(device)) {
            return before;
        }
        List<Element> elements = new ArrayList<>(List.of(now.withDevice(other)));
        for (DataBus bus : before.buses().all()) {
            DataBus renamed = bus.sending(bus.messages().stream()
                    .map(each -> each.sender().equals(unit) ? each.renaming(name, changed.name()) : each)
                    .toList());
            if (!renamed.equals(bus)) {
                elements.add(renamed);
            }
        }
        return before.withAll(elements);
    }
}
