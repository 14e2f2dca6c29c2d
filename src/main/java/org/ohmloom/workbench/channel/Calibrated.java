package org.ohmloom.workbench.channel;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.edit.ChangeDevice;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Component;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.workbench.words.Words;

/**
 * What a calibration is entered for: a sensor and the input that reads it, a sensor that nothing reads yet, or a sensor that is not there
 * yet.
 *
 * @param component the sensor
 * @param sensor    what it is
 * @param channel   the input that reads it; empty where none does
 * @param there     whether it is in the harness
 */
record Calibrated(Component component, Sensor sensor, Optional<SensorChannel> channel, boolean there) {

    static Calibrated read(SensorChannel channel) {
        return new Calibrated(channel.component(), channel.sensor(), Optional.of(channel), true);
    }

    /** A sensor that no input reads; empty for anything else. */
    static Optional<Calibrated> unread(Component component) {
        return component.device() instanceof Sensor sensor
                ? Optional.of(new Calibrated(component, sensor, Optional.empty(), true))
                : Optional.empty();
    }

    /** A sensor that is to be put in. */
    static Calibrated fresh(Harness harness) {
        Sensor sensor = new Sensor(Sensor.Kind.OTHER, 0, OptionalDouble.empty());
        String id = new FreshIds(harness).next("B");
        return new Calibrated(
                Component.of(id, Words.of("channels").get("calibrate.new.name"), sensor),
                sensor,
                Optional.empty(),
                false);
    }

    /** The edit that enters a measurement: into the sensor, or with a new one that has its quantity as its name. */
    Edit entering(Measurement measurement, Words words) {
        if (there) {
            return new ChangeDevice(
                    words.text("calibrate.edit", component.id()),
                    component.id(),
                    device -> device instanceof Sensor each ? each.measuring(Optional.of(measurement)) : device);
        }
        Sensor measuring = new Sensor(
                kind(measurement.calibration()), sensor.drawAmps(), sensor.signalOhms(), Optional.of(measurement));
        return PutElements.one(
                words.text("calibrate.put", component.id()),
                Component.of(component.id().value(), measurement.quantity(), measuring));
    }

    /** What kind of sensor gives a curve of that kind. */
    private static Sensor.Kind kind(Calibration calibration) {
        if (calibration instanceof Calibration.RatiometricLine) {
            return Sensor.Kind.RATIOMETRIC;
        }
        if (calibration instanceof Calibration.Beta || calibration instanceof Calibration.SteinhartHart) {
            return Sensor.Kind.THERMISTOR;
        }
        if (calibration instanceof Calibration.PulseLevels) {
            return Sensor.Kind.HALL;
        }
        return calibration instanceof Calibration.SwitchContact
                ? Sensor.Kind.SWITCH
                : calibration instanceof Calibration.Thermocouple ? Sensor.Kind.THERMOCOUPLE : Sensor.Kind.OTHER;
    }
}
