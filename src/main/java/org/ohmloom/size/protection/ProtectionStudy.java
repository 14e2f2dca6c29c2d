package org.ohmloom.size.protection;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import org.ohmloom.graph.Branch;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;

/** Studies every protective device of a harness, and every output that limits its own current. */
public final class ProtectionStudy {
    private final ProtectionInput input;
    private final Relying relying;
    private final FaultNetworks networks;
    private final FaultStudy faults;
    private final ConductorLimits limits;
    private final SystemVolts volts;
    private final SortedMap<WireId, List<ComponentId>> relyingWires = new TreeMap<>();
    private final Map<WireId, Double> outputLimitAmps = new HashMap<>();

    private ProtectionStudy(ProtectionInput input) {
        this.input = input;
        relying = new Relying(input.harness(), input.upstream());
        networks = new FaultNetworks(input);
        faults = new FaultStudy(input, relying, networks);
        limits = new ConductorLimits(input);
        volts = new SystemVolts(input);
    }

    /**
     * Studies a harness.
     *
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public static ProtectionResults of(ProtectionInput input) {
        return new ProtectionStudy(input).results();
    }

    private ProtectionResults results() {
        for (Wire wire : input.harness().wires().all()) {
            Optional<Branch> branch = input.drawn().branch(wire.id());
            List<ComponentId> devices =
                    branch.map(each -> faults.devices(wire.id(), each)).orElse(List.of());
            if (!devices.isEmpty()) {
                relyingWires.put(wire.id(), List.copyOf(devices));
            }
        }
        OutputStudy behindOutputs = new OutputStudy(input, limits, networks, relying, faults.places());
        List<OutputProtection> outputs = behindOutputs.study();
        outputs.forEach(output -> output.conductors()
                .forEach(each ->
                        outputLimitAmps.merge(each.wire(), output.limit().limitAmps(), Math::min)));
        StartStudy starts = new StartStudy(input, networks);
        DeviceStudy study = new DeviceStudy(input, relying, faults, starts, volts, behindOutputs);
        RelyingConductors conductors =
                new RelyingConductors(input, relying, faults, limits, relyingWires, outputLimitAmps);
        SortedMap<ComponentId, DeviceProtection> devices = new TreeMap<>();
        for (Component component : input.harness().components().all()) {
            if (input.cancelled().getAsBoolean()) {
                throw new CancellationException("protection cancelled");
            }
            if (component.device() instanceof ProtectiveDevice device) {
                devices.put(component.id(), study.study(component, device, conductors.of(component.id())));
            }
        }
        return new ProtectionResults(
                devices,
                outputs,
                VoltageRating.of(input, volts),
                relyingWires,
                starts.untimed(),
                new TypeSearch(input, study, conductors, devices).proposals());
    }
}
