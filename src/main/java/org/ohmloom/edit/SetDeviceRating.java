package org.ohmloom.edit;

import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Sets the rated current of a protective device.
 *
 * @param device     the component
 * @param ratingAmps rated current, A, more than 0
 */
public record SetDeviceRating(ComponentId device, double ratingAmps) implements Edit {

    @Override
    public Text label() {
        return Labels.text("set-rating", device, Formats.amps(ratingAmps));
    }

    @Override
    public Harness apply(Harness before) {
        Component component = before.components().get(device);
        return component.device() instanceof ProtectiveDevice protective
                ? before.with(component.withDevice(protective.withRatingAmps(ratingAmps)))
                : before;
    }
}
