package org.ohmloom.size.protection;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.WireId;

/**
 * What the study of protection found.
 *
 * @param devices      every protective device
 * @param outputs      outputs with an electronic limit
 * @param voltages     parts whose voltage rating is known
 * @param relying      the devices each wire relies on; wires that rely on none have no entry
 * @param untimed      loads whose start current is entered but not how long it lasts
 * @param proposals    type and rating proposed for every protective device
 */
public record ProtectionResults(
        SortedMap<ComponentId, DeviceProtection> devices,
        List<OutputProtection> outputs,
        List<VoltageRating> voltages,
        SortedMap<WireId, List<ComponentId>> relying,
        SortedSet<ComponentId> untimed,
        SortedMap<ComponentId, DeviceProposal> proposals) {

    /** Nothing studied. */
    public static final ProtectionResults NONE = new ProtectionResults(
            new TreeMap<>(), List.of(), List.of(), new TreeMap<>(), new TreeSet<>(), new TreeMap<>());

    public ProtectionResults {
        devices = Collections.unmodifiableSortedMap(new TreeMap<>(devices));
        outputs = List.copyOf(outputs);
        voltages = List.copyOf(voltages);
        relying = Collections.unmodifiableSortedMap(new TreeMap<>(relying));
        untimed = Collections.unmodifiableSortedSet(new TreeSet<>(untimed));
        proposals = Collections.unmodifiableSortedMap(new TreeMap<>(proposals));
    }

    /** The study of a device. */
    public Optional<DeviceProtection> of(ComponentId device) {
        return Optional.ofNullable(devices.get(device));
    }

    /** What is proposed for a device. */
    public Optional<DeviceProposal> proposal(ComponentId device) {
        return Optional.ofNullable(proposals.get(device));
    }

    /** The pictures of a wire: one for each device it relies on. */
    public List<ProtectionCurves> curves(WireId wire) {
        return relying.getOrDefault(wire, List.of()).stream()
                .flatMap(device -> of(device).stream())
                .map(device -> ProtectionCurves.of(
                        device,
                        device.conductors().stream()
                                .filter(each -> each.wire().equals(wire))
                                .findFirst()))
                .toList();
    }

    /** The picture of a device with its weakest conductor. */
    public Optional<ProtectionCurves> curves(ComponentId device) {
        return of(device).map(found -> ProtectionCurves.of(found, found.weakest()));
    }

    /** The pictures of a branch by its text: of a wire, or of a device. */
    public List<ProtectionCurves> curves(String branch) {
        for (Map.Entry<ComponentId, DeviceProtection> entry : devices.entrySet()) {
            if (entry.getKey().value().equals(branch)) {
                return curves(entry.getKey()).stream().toList();
            }
        }
        return curves(new WireId(branch));
    }
}
