package org.ohmloom.edit;

import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Sensor;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Sends the value of a sensor at a rate; nothing for one that is not said to measure anything.
 *
 * @param sensor      the sensor
 * @param updateHertz how often, Hz, more than 0
 */
public record SetUpdateRate(ComponentId sensor, double updateHertz) implements Edit {

    @Override
    public Text label() {
        return Labels.text("send-at", sensor, Formats.hertz(updateHertz));
    }

    @Override
    public Harness apply(Harness before) {
        Component now = before.components().get(sensor);
        Sensor device = (Sensor) now.device();
        Sensor other = device.measuring(device.measurement().map(each -> each.sentAt(updateHertz)));
        return other.equals(device) ? before : before.with(now.withDevice(other));
    }
}
