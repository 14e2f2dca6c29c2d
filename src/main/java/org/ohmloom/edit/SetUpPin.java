package org.ohmloom.edit;

import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.PinRole;
import org.ohmloom.words.Constants;
import org.ohmloom.words.Text;

/**
 * Sets a pin of a unit up for a role it can take up.
 *
 * @param unit the unit
 * @param pin  name of the pin
 * @param role what it is used as afterwards
 */
public record SetUpPin(ComponentId unit, String pin, PinRole role) implements Edit {

    @Override
    public Text label() {
        return Labels.text("set-up-pin", unit, pin, Constants.text(role));
    }

    @Override
    public Harness apply(Harness before) {
        Component now = before.components().get(unit);
        ControlUnit device = (ControlUnit) now.device();
        ControlUnit other = device.withPins(device.pins().stream()
                .map(each -> each.name().equals(pin) ? each.setUpAs(role) : each)
                .toList());
        return other.equals(device) ? before : before.with(now.withDevice(other));
    }
}
