package org.ohmloom.edit;

import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Puts a protective device of another type or version in the place of one.
 *
 * @param component the component
 * @param device    what it is to be
 */
public record SetDeviceType(ComponentId component, ProtectiveDevice device) implements Edit {

    @Override
    public Text label() {
        String rating = Formats.amps(device.ratingAmps());
        return device.ratedVolts().isPresent()
                ? Labels.text(
                        "make-for-volts",
                        component,
                        device.series(),
                        rating,
                        Formats.volts(device.ratedVolts().getAsDouble()))
                : Labels.text("make", component, device.series(), rating);
    }

    @Override
    public Harness apply(Harness before) {
        Component now = before.components().get(component);
        return now.device() instanceof ProtectiveDevice && !now.device().equals(device)
                ? before.with(now.withDevice(device))
                : before;
    }
}
