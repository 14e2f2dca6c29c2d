package org.ohmloom.size;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetDeviceRating;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;

/**
 * Puts choices into a harness, as edits. What is already in the vehicle is never changed.
 *
 * <p>A choice for a wire that has a size holds with all other sizes as they are; to choose all anew, first
 * {@link #clear} them, then analyse, then apply.
 */
public final class Sizing {

    private Sizing() {}

    /** Takes the size from every wire to be made, except shields and wires with a measured resistance. */
    public static Edit clear(Harness harness) {
        List<WireId> wires = harness.wires().all().stream()
                .filter(wire -> !wire.existing()
                        && wire.measuredOhms().isEmpty()
                        && wire.signalClass() != SignalClass.SHIELD
                        && wire.gauge().isPresent())
                .map(Wire::id)
                .toList();
        return new SetWireGauge(wires, Optional.empty());
    }

    /** Gives every wire to be made that has no size the chosen one, as far as one was found. */
    public static Edit conductors(Harness harness, Map<WireId, ConductorChoice> choices) {
        SortedMap<Gauge, List<WireId>> byGauge = new TreeMap<>();
        for (Wire wire : harness.wires().all()) {
            if (wire.existing() || wire.gauge().isPresent()) {
                continue;
            }
            Optional.ofNullable(choices.get(wire.id()))
                    .flatMap(ConductorChoice::gauge)
                    .ifPresent(gauge -> byGauge.computeIfAbsent(gauge, size -> new ArrayList<>())
                            .add(wire.id()));
        }
        List<Edit> edits = new ArrayList<>();
        byGauge.forEach((gauge, wires) -> edits.add(new SetWireGauge(wires, Optional.of(gauge))));
        return new Compound("Choose conductors", edits);
    }

    /** Gives every protective device to be fitted the chosen rating, as far as one was found. */
    public static Edit devices(Harness harness, Map<ComponentId, DeviceChoice> choices) {
        List<Edit> edits = new ArrayList<>();
        for (Component component : harness.components().all()) {
            if (component.existing() || !(component.device() instanceof ProtectiveDevice)) {
                continue;
            }
            Optional.ofNullable(choices.get(component.id())).ifPresent(choice -> choice.ratingAmps()
                    .ifPresent(amps -> edits.add(new SetDeviceRating(component.id(), amps))));
        }
        return new Compound("Choose protective devices", edits);
    }

    /** The harness with both kinds of choice applied. */
    public static Harness sizedHarness(
            Harness harness, Map<WireId, ConductorChoice> conductors, Map<ComponentId, DeviceChoice> devices) {
        return devices(harness, devices).apply(conductors(harness, conductors).apply(harness));
    }
}
