package org.ohmloom.signal.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.SensorInputs;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.Sensor;

/**
 * Finds the channels of a harness: what the plan of a unit's pins says, and each signal that wires and contacts alone lead to an input
 * of a unit the plan does not name for it. O(sensors x pins).
 */
public final class SensorChannels {

    private final Harness harness;
    private final SensorInputs inputs;

    private SensorChannels(Harness harness, Network network) {
        this.harness = harness;
        this.inputs = SensorInputs.of(network);
    }

    /**
     * The channels in the order of the units, their pins, and the sensors.
     *
     * @param harness the harness
     * @param network its network as drawn
     */
    public static List<SensorChannel> of(Harness harness, Network network) {
        return new SensorChannels(harness, network).all();
    }

    private List<SensorChannel> all() {
        List<SensorChannel> channels = new ArrayList<>();
        for (Component unit : harness.components().all()) {
            if (unit.device() instanceof ControlUnit device) {
                for (Pin pin : device.pins()) {
                    for (Component component : harness.components().all()) {
                        if (component.device() instanceof Sensor sensor) {
                            channel(unit, device, pin, component, sensor).ifPresent(channels::add);
                        }
                    }
                }
            }
        }
        return channels;
    }

    private Optional<SensorChannel> channel(
            Component unit, ControlUnit device, Pin pin, Component component, Sensor sensor) {
        Optional<Channel> planned = device.channels().stream()
                .filter(each ->
                        each.pin().equals(pin.name()) && each.component().equals(component.id()))
                .findFirst();
        boolean wired = inputs.reads(unit, pin, component);
        if (planned.isEmpty() && !wired) {
            return Optional.empty();
        }
        Optional<Pin> fedBy = inputs.fedBy(unit, device, component)
                .or(() -> planned.flatMap(Channel::supplyPin).flatMap(device::pin));
        return Optional.of(new SensorChannel(
                planned.map(Channel::name).orElse(component.name()),
                component,
                sensor,
                unit,
                device,
                pin,
                fedBy,
                fedBy.isPresent() || inputs.point(component, Sensor.SUPPLY).isPresent(),
                wired));
    }
}
