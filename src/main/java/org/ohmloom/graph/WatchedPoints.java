package org.ohmloom.graph;

import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;

/**
 * The points whose voltage matters in every moment of what switches: what others are measured against and what is measured. The
 * datum, grounds, sensor returns, reference supplies and inputs of control units, terminals of sensors, and ground points with the
 * bodies under them.
 */
public final class WatchedPoints {

    private WatchedPoints() {}

    /** The watched points of a harness. */
    public static SortedSet<PointId> of(Network network, Harness harness) {
        SortedSet<PointId> watched = new TreeSet<>();
        network.datum().ifPresent(watched::add);
        for (Component component : harness.components().all()) {
            if (component.device() instanceof ControlUnit unit) {
                unit.pins().stream()
                        .filter(pin -> isWatched(pin.role()))
                        .map(pin -> network.index().terminal(component.id(), pin.name()))
                        .flatMap(Optional::stream)
                        .forEach(watched::add);
            } else if (component.device() instanceof Sensor sensor) {
                sensor.terminals().stream()
                        .map(terminal -> network.index().terminal(component.id(), terminal))
                        .flatMap(Optional::stream)
                        .forEach(watched::add);
            }
        }
        for (GroundPoint ground : harness.grounds().all()) {
            network.index().ground(ground.id()).ifPresent(watched::add);
            network.index().groundBody(ground.id()).ifPresent(watched::add);
        }
        return watched;
    }

    private static boolean isWatched(PinRole role) {
        return role == PinRole.GROUND
                || role == PinRole.SENSOR_RETURN
                || role == PinRole.REFERENCE_SUPPLY
                || role.isInput();
    }
}
