package org.ohmloom.graph;

import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;

/**
 * Which control unit reads each sensor, found from the connections alone: the first one with an input that the sensor's signal
 * terminal reaches through wires, contacts and devices that can close.
 */
public final class ReadingUnits {

    /**
     * A sensor and the unit that reads it.
     *
     * @param sensor    the sensor
     * @param back      point of its return terminal
     * @param unit      the control unit
     * @param input     the pin of the unit that reads it
     * @param reference what the unit measures against: its sensor return, its ground where it has none; empty without either
     */
    public record Reading(ComponentId sensor, PointId back, ComponentId unit, Pin input, Optional<PointId> reference) {}

    private final SortedMap<ComponentId, Reading> bySensor = new TreeMap<>();

    private ReadingUnits() {}

    /**
     * Finds the unit of every sensor.
     *
     * @param network the harness as a network, in any operating state
     * @param harness the harness
     */
    public static ReadingUnits of(Network network, Harness harness) {
        Passages passages = new Passages(network);
        ReadingUnits units = new ReadingUnits();
        for (Component sensor : harness.components().all()) {
            if (sensor.device() instanceof Sensor) {
                find(network, harness, passages, sensor.id())
                        .ifPresent(reading -> units.bySensor.put(sensor.id(), reading));
            }
        }
        return units;
    }

    private static Optional<Reading> find(Network network, Harness harness, Passages passages, ComponentId sensor) {
        Optional<PointId> signal = network.index().terminal(sensor, Sensor.SIGNAL);
        Optional<PointId> back = network.index().terminal(sensor, Sensor.RETURN);
        if (signal.isEmpty() || back.isEmpty()) {
            return Optional.empty();
        }
        Set<PointId> heard = passages.reached(Set.of(signal.get()));
        for (Component component : harness.components().all()) {
            if (component.device() instanceof ControlUnit unit) {
                Optional<Pin> input = unit.pins().stream()
                        .filter(pin -> pin.role().isInput())
                        .filter(pin -> network.index()
                                .terminal(component.id(), pin.name())
                                .filter(heard::contains)
                                .isPresent())
                        .findFirst();
                if (input.isPresent()) {
                    return Optional.of(new Reading(
                            sensor, back.get(), component.id(), input.get(), reference(network, component.id(), unit)));
                }
            }
        }
        return Optional.empty();
    }

    /** What a control unit measures against: its sensor return, its ground where it has none; empty without either. */
    public static Optional<PointId> reference(Network network, ComponentId id, ControlUnit unit) {
        return rail(network, id, unit, PinRole.SENSOR_RETURN).or(() -> rail(network, id, unit, PinRole.GROUND));
    }

    /** The one point that all pins of a role of a control unit are inside it; empty when it has none. */
    public static Optional<PointId> rail(Network network, ComponentId id, ControlUnit unit, PinRole role) {
        return unit.pinsOf(role)
                .flatMap(pin -> network.index().terminal(id, pin.name()).stream())
                .findFirst();
    }

    /** The unit that reads a sensor; empty when none does. */
    public Optional<Reading> of(ComponentId sensor) {
        return Optional.ofNullable(bySensor.get(sensor));
    }

    /** All sensors that are read. */
    public SortedMap<ComponentId, Reading> all() {
        return Collections.unmodifiableSortedMap(bySensor);
    }
}
