package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;

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
        SortedMap<ComponentId, DeviceProtection> devices = new TreeMap<>();
        for (Component component : input.harness().components().all()) {
            if (component.device() instanceof ProtectiveDevice device) {
                devices.put(
                        component.id(),
                        new DeviceStudy(input, relying, faults, starts, volts, behindOutputs)
                                .study(component, device, conductors(component.id())));
            }
        }
        return new ProtectionResults(devices, outputs, VoltageRating.of(input, volts), relyingWires, starts.untimed());
    }

    /** The conductors that rely on a device, the weakest first. */
    private List<ConductorProtection> conductors(ComponentId device) {
        List<ConductorProtection> conductors = new ArrayList<>();
        relyingWires.forEach((wire, devices) -> {
            if (devices.contains(device)) {
                limits.of(input.harness().wires().get(wire))
                        .filter(limit -> !limitedBefore(wire, devices))
                        .ifPresent(limit -> conductors.add(conductor(wire, limit, devices)));
            }
        });
        conductors.sort(ConductorProtection.WEAKEST_FIRST);
        return conductors;
    }

    /** Whether an output before the wire limits its current to less than its devices carry for ever. */
    private boolean limitedBefore(WireId wire, List<ComponentId> devices) {
        Double limit = outputLimitAmps.get(wire);
        return limit != null
                && band(devices).map(band -> limit < band.foreverAmps()).orElse(true);
    }

    private ConductorProtection conductor(WireId wire, ConductorLimit limit, List<ComponentId> devices) {
        WireFaults found = faults.of(wire);
        double largest = found.maximumAmps().orElse(Double.POSITIVE_INFINITY);
        List<FeedingDevices> feeding = input.drawn()
                .branch(wire)
                .filter(branch -> !input.upstream().isReturn(wire))
                .map(branch -> FeedingDevices.of(input.harness(), input.tables(), input.upstream(), relying, branch))
                .filter(ends -> !ends.isEmpty())
                .orElse(List.of(new FeedingDevices(new TreeSet<>(devices), 0)));
        Optional<BandAgainstConductor> against = against(limit, largest, feeding);
        Optional<Gauge> larger = against.filter(each -> !each.isProtected())
                .flatMap(each ->
                        limits.larger(input.harness().wires().get(wire), thicker -> against(thicker, largest, feeding)
                                .filter(BandAgainstConductor::isProtected)
                                .isPresent()));
        return new ConductorProtection(wire, limit, found, against, larger);
    }

    /** The worst of the ends current comes in by; empty when a device of one has no published times. */
    private Optional<BandAgainstConductor> against(ConductorLimit limit, double largest, List<FeedingDevices> feeding) {
        Optional<BandAgainstConductor> worst = Optional.empty();
        for (FeedingDevices end : feeding) {
            Optional<TimeCurrentBand> band = band(List.copyOf(end.devices()));
            if (band.isEmpty() && !end.devices().isEmpty()) {
                return Optional.empty();
            }
            Optional<BandAgainstConductor> found = band.map(
                            each -> BandAgainstConductor.of(each, limit, largest, end.extraAmps()))
                    .or(() -> Optional.of(BandAgainstConductor.steady(limit, end.extraAmps())));
            if (found.isPresent() && (worst.isEmpty() || found.get().isWorseThan(worst.get()))) {
                worst = found;
            }
        }
        return worst;
    }

    /** The band of several devices together; empty when one of them has none. */
    private Optional<TimeCurrentBand> band(List<ComponentId> devices) {
        List<TimeCurrentBand> bands = devices.stream()
                .flatMap(id -> relying.device(id).stream())
                .flatMap(device -> TimeCurrentBand.of(input.tables(), device).stream())
                .toList();
        return bands.isEmpty() || bands.size() < devices.size()
                ? Optional.empty()
                : Optional.of(TimeCurrentBand.together(bands));
    }
}
