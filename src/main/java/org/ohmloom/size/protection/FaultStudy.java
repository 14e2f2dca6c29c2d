package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.FeedSource;
import org.ohmloom.graph.FeedWay;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.Upstream;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Solves every fault the study needs: the smallest at each load, the largest behind each device and at the start of each wire.
 */
final class FaultStudy {

    /** Most points a fault on a wire without a load of its own is taken to return to. */
    private static final int MOST_RETURNS = 6;

    private final ProtectionInput input;
    private final Upstream upstream;
    private final Relying relying;
    private final FaultNetworks networks;
    private final Map<WireId, WireFaults> wires = new HashMap<>();
    private final Map<ComponentId, Fault> minima = new HashMap<>();
    private final Map<ComponentId, Double> minimumRatios = new HashMap<>();
    private final Map<BranchId, Set<PointId>> returnsOf = new HashMap<>();
    private final Map<PointId, Optional<FaultFlows>> strongestAt = new HashMap<>();
    private final Map<ComponentId, Optional<Fault>> maxima = new HashMap<>();
    private final List<FaultPlace> places;
    private final List<PointId> bodies;

    FaultStudy(ProtectionInput input, Relying relying, FaultNetworks networks) {
        this.input = input;
        this.upstream = input.upstream();
        this.relying = relying;
        this.networks = networks;
        this.places = FaultPlace.of(input.drawn(), upstream);
        this.bodies = input.harness().bodies().ids().stream()
                .flatMap(id -> input.drawn().index().at(id.value()).stream())
                .distinct()
                .toList();
        places.forEach(this::atLoad);
        for (Wire wire : input.harness().wires().all()) {
            network().branch(wire.id()).ifPresent(branch -> alongWire(wire.id(), branch));
        }
    }

    private Network network() {
        return input.drawn();
    }

    /** The fault currents a wire may see. */
    WireFaults of(WireId wire) {
        return wires.getOrDefault(wire, WireFaults.NONE);
    }

    /** The smallest fault a device must clear. */
    Optional<Fault> minimum(ComponentId device) {
        return Optional.ofNullable(minima.get(device));
    }

    /** All sources; those without a way to the fault are passed over. */
    private List<FeedSource> all() {
        return upstream.sources();
    }

    private void atLoad(FaultPlace place) {
        SortedSet<ComponentId> devices = relying.on(place.at());
        for (FeedSource source : relying.sources(place.at())) {
            List<BranchId> way =
                    upstream.way(source, place.at()).map(FeedWay::branches).orElse(List.of());
            way.forEach(branch -> returnsOf
                    .computeIfAbsent(branch, id -> new LinkedHashSet<>())
                    .add(place.to()));
            networks.hot()
                    .flows(place.at(), place.to(), FaultNetwork.FAULT_OHMS, List.of(source), false)
                    .ifPresent(flows -> least(Text.of(place.label()), flows, devices, source));
        }
        networks.cool()
                .flows(place.at(), place.to(), FaultNetwork.FAULT_OHMS, all(), true)
                .ifPresent(flows -> carry(flows, devices, false));
    }

    /** Keeps the currents of a smallest fault: for its devices, and for the wires that rely on one of them. */
    private void least(Text label, FaultFlows flows, SortedSet<ComponentId> devices, FeedSource source) {
        double rating = 0;
        double through = 0;
        for (ComponentId device : devices) {
            double amps = flows.through(new BranchId(device.value()));
            if (amps > 0) {
                rating += relying.device(device).orElseThrow().ratingAmps();
                through += amps;
            }
        }
        for (ComponentId device : devices) {
            double amps = flows.through(new BranchId(device.value()));
            double ratio = through / rating;
            if (amps > 0 && ratio < minimumRatios.getOrDefault(device, Double.POSITIVE_INFINITY)) {
                minimumRatios.put(device, ratio);
                minima.put(
                        device,
                        new Fault(
                                label,
                                flows.amps(),
                                amps,
                                !relying.isBattery(source),
                                FaultTexts.text(
                                        "smallest",
                                        label,
                                        Formats.amps(flows.amps()),
                                        networks.hotText(source.component()),
                                        Formats.amps(amps),
                                        device)));
            }
        }
        carry(flows, devices, true);
    }

    private void carry(FaultFlows flows, SortedSet<ComponentId> devices, boolean minimum) {
        flows.through().forEach((branch, amps) -> network()
                .branch(branch)
                .filter(each -> each.kind() == BranchKind.WIRE)
                .ifPresent(each -> {
                    WireId wire = new WireId(branch.value());
                    List<ComponentId> own = devices(wire, each);
                    if (own.stream().anyMatch(devices::contains)) {
                        WireFaults known = of(wire);
                        if (minimum) {
                            wires.put(wire, known.withMinimum(amps));
                        } else if (upstream.isReturn(wire)) {
                            wires.put(wire, known.withMaximum(amps));
                        }
                    }
                }));
    }

    /** The devices a wire relies on: for a feed those before it, for a return the one that limits it. */
    List<ComponentId> devices(WireId wire, Branch branch) {
        return upstream.isReturn(wire) ? input.returnDevices().apply(wire) : List.copyOf(relying.on(branch.from()));
    }

    private void alongWire(WireId wire, Branch branch) {
        SortedSet<ComponentId> devices = relying.on(branch.from());
        if (devices.isEmpty() || upstream.isReturn(wire)) {
            return;
        }
        PointId near = near(branch);
        PointId far = near.equals(branch.from()) ? branch.to() : branch.from();
        strongest(near).ifPresent(flows -> wires.put(wire, of(wire).withMaximum(flows.amps())));
        if (of(wire).minimumAmps().isEmpty()) {
            for (FeedSource source : relying.sources(far)) {
                returnsNear(branch, near).stream()
                        .flatMap(to ->
                                networks.hot().flows(far, to, FaultNetwork.FAULT_OHMS, List.of(source), false).stream())
                        .max(Comparator.comparingDouble(FaultFlows::amps))
                        .ifPresent(flows -> least(FaultTexts.text("at.end", wire), flows, devices, source));
            }
        }
    }

    /**
     * Where a fault at a wire without a load of its own returns: the chassis, else where the loads behind it return, else the
     * source's negative terminal.
     */
    private Collection<PointId> returnsNear(Branch branch, PointId near) {
        if (!bodies.isEmpty()) {
            return bodies;
        }
        Set<PointId> returns = returnsOf.getOrDefault(branch.id(), Set.of());
        return returns.isEmpty()
                ? negative(near).map(Set::of).orElse(Set.of())
                : returns.stream().limit(MOST_RETURNS).toList();
    }

    /** The strongest fault between a live point and the chassis, or the source's negative terminal without chassis. */
    private Optional<FaultFlows> strongest(PointId at) {
        Optional<FaultFlows> known = strongestAt.get(at);
        if (known == null) {
            known = solvedStrongest(at);
            strongestAt.put(at, known);
        }
        return known;
    }

    private Optional<FaultFlows> solvedStrongest(PointId at) {
        Collection<PointId> to = bodies.isEmpty() ? negative(at).map(List::of).orElse(List.of()) : bodies;
        return to.stream()
                .flatMap(point -> networks.cool().flows(at, point, FaultNetwork.FAULT_OHMS, all(), true).stream())
                .max(Comparator.comparingDouble(FaultFlows::amps));
    }

    /** The end of a wire that current comes in by. */
    private PointId near(Branch branch) {
        return all().stream()
                .flatMap(source -> relying.entry(source, branch).stream())
                .findFirst()
                .orElse(branch.from());
    }

    /** The negative terminal of the first source that feeds a point. */
    private Optional<PointId> negative(PointId point) {
        return relying.sources(point).stream()
                .findFirst()
                .flatMap(source -> network().branch(source.branch()))
                .map(Branch::from);
    }

    /** The largest current through a device: a fault right behind it, everything that gives running. */
    Optional<Fault> maximum(ComponentId device) {
        return maxima.computeIfAbsent(device, this::solvedMaximum);
    }

    private Optional<Fault> solvedMaximum(ComponentId device) {
        return network().branch(new BranchId(device.value())).flatMap(branch -> {
            List<Fault> faults = new ArrayList<>();
            for (PointId behind : List.of(branch.to(), branch.from())) {
                if (all().stream().anyMatch(source -> relying.passes(source, behind, branch.id()))) {
                    strongest(behind).ifPresent(flows -> faults.add(largest(device, flows, branch.id())));
                }
            }
            return faults.stream().max(Comparator.comparingDouble(Fault::deviceAmps));
        });
    }

    private Fault largest(ComponentId device, FaultFlows flows, BranchId branch) {
        return new Fault(
                Text.of(device.value()),
                flows.amps(),
                flows.through(branch),
                false,
                FaultTexts.text(
                        bodies.isEmpty() ? "largest-to-negative" : "largest-to-chassis",
                        device,
                        Formats.amps(flows.through(branch))));
    }

    /** Whether some load is fed over a branch. */
    boolean feedsLoads(BranchId branch) {
        return returnsOf.containsKey(branch);
    }

    /** Where a fault is reckoned at loads. */
    List<FaultPlace> places() {
        return Collections.unmodifiableList(places);
    }
}
