package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeSet;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Text;

/** The conductors that rely on each device, held against it or against another in its place. */
final class RelyingConductors {
    private final ProtectionInput input;
    private final Relying relying;
    private final FaultStudy faults;
    private final ConductorLimits limits;
    private final SortedMap<WireId, List<ComponentId>> devicesOf;
    private final Map<WireId, Double> outputLimitAmps;
    private final DeviceAllowance allowance;
    private final Map<WireId, List<FeedingDevices>> feeding = new HashMap<>();

    /**
     * For one study.
     *
     * @param devicesOf       the devices each wire relies on
     * @param outputLimitAmps limit of the output before a wire, A, where there is one
     */
    RelyingConductors(
            ProtectionInput input,
            Relying relying,
            FaultStudy faults,
            ConductorLimits limits,
            SortedMap<WireId, List<ComponentId>> devicesOf,
            Map<WireId, Double> outputLimitAmps) {
        this.input = input;
        this.relying = relying;
        this.faults = faults;
        this.limits = limits;
        this.devicesOf = devicesOf;
        this.outputLimitAmps = outputLimitAmps;
        this.allowance = DeviceAllowance.of(
                input.tables(), input.basis(), input.harness().rules().nominalVolts());
    }

    /** One device in the place of another. */
    private record Swap(ComponentId id, ProtectiveDevice device) {}

    /** The conductors that rely on a device, the weakest first, each with the size that would be protected. */
    List<ConductorProtection> of(ComponentId device) {
        Swap present = new Swap(device, relying.device(device).orElseThrow());
        return sorted(present).stream().map(each -> withLarger(each, present)).toList();
    }

    /** The same conductors with another device in its place, the weakest first. */
    List<ConductorProtection> behind(ComponentId id, ProtectiveDevice instead) {
        return sorted(new Swap(id, instead));
    }

    /** Whether the rule of the basis lets a device stand in the place of one, for the conductors that rely on it. */
    Optional<Check> allowed(ComponentId id, ProtectiveDevice instead, List<ConductorProtection> conductors) {
        Swap swap = new Swap(id, instead);
        Optional<ConductorProtection> first =
                conductors.stream().filter(each -> !allows(each, swap)).findFirst();
        return first.or(() -> conductors.stream().findFirst())
                .map(each -> Check.judged(
                        Check.Aspect.RATED,
                        first.isEmpty(),
                        CheckTexts.text(
                                "allows",
                                each.wire(),
                                each.limit().size(),
                                Formats.amps(each.limit().ampacityAmps()),
                                allowance.text()),
                        Text.of(allowance
                                .citation(
                                        instead,
                                        instead.ratingAmps(),
                                        gauge(each),
                                        each.limit().ampacityAmps())
                                .text())));
    }

    private boolean allows(ConductorProtection conductor, Swap swap) {
        double together = feeding(conductor.wire()).stream()
                .mapToDouble(end -> end.devices().stream()
                        .flatMap(id -> device(id, swap).stream())
                        .mapToDouble(ProtectiveDevice::ratingAmps)
                        .sum())
                .max()
                .orElse(0);
        double ampacity = conductor.limit().ampacityAmps();
        return allowance.allows(swap.device(), swap.device().ratingAmps(), gauge(conductor), ampacity)
                && (together <= swap.device().ratingAmps()
                        || allowance.allows(swap.device(), together, gauge(conductor), ampacity));
    }

    private Gauge gauge(ConductorProtection conductor) {
        return input.ratings().get(conductor.wire()).gauge();
    }

    private List<ConductorProtection> sorted(Swap swap) {
        List<ConductorProtection> conductors = new ArrayList<>();
        devicesOf.forEach((wire, devices) -> {
            if (devices.contains(swap.id())) {
                limits.of(input.harness().wires().get(wire))
                        .filter(limit -> !limitedBefore(wire, devices, swap))
                        .ifPresent(limit -> conductors.add(new ConductorProtection(
                                wire, limit, faults.of(wire), against(wire, limit, swap), Optional.empty())));
            }
        });
        conductors.sort(ConductorProtection.WEAKEST_FIRST);
        return conductors;
    }

    private ConductorProtection withLarger(ConductorProtection found, Swap present) {
        Optional<Gauge> larger = found.against()
                .filter(each -> !each.isProtected())
                .flatMap(each -> limits.larger(
                        input.harness().wires().get(found.wire()), thicker -> against(found.wire(), thicker, present)
                                .filter(BandAgainstConductor::isProtected)
                                .isPresent()));
        return new ConductorProtection(found.wire(), found.limit(), found.faults(), found.against(), larger);
    }

    /** Whether an output before the wire limits its current to less than its devices carry for ever. */
    private boolean limitedBefore(WireId wire, List<ComponentId> devices, Swap swap) {
        Double limit = outputLimitAmps.get(wire);
        return limit != null
                && band(devices, swap).map(band -> limit < band.foreverAmps()).orElse(true);
    }

    private List<FeedingDevices> feeding(WireId wire) {
        return feeding.computeIfAbsent(wire, id -> input.drawn()
                .branch(id)
                .filter(branch -> !input.upstream().isReturn(id))
                .map(branch -> FeedingDevices.of(input.harness(), input.tables(), input.upstream(), relying, branch))
                .filter(ends -> !ends.isEmpty())
                .orElse(List.of(new FeedingDevices(new TreeSet<>(devicesOf.get(id)), 0))));
    }

    /** The worst of the ends current comes in by; empty when a device of one has no published times. */
    private Optional<BandAgainstConductor> against(WireId wire, ConductorLimit limit, Swap swap) {
        double largest = faults.of(wire).maximumAmps().orElse(Double.POSITIVE_INFINITY);
        Optional<BandAgainstConductor> worst = Optional.empty();
        for (FeedingDevices end : feeding(wire)) {
            Optional<TimeCurrentBand> band = band(List.copyOf(end.devices()), swap);
            if (band.isEmpty() && !end.devices().isEmpty()) {
                return Optional.empty();
            }
            BandAgainstConductor found = band.map(
                            each -> BandAgainstConductor.of(each, limit, largest, end.extraAmps()))
                    .orElseGet(() -> BandAgainstConductor.steady(limit, end.extraAmps()));
            if (worst.isEmpty() || found.isWorseThan(worst.get())) {
                worst = Optional.of(found);
            }
        }
        return worst;
    }

    /** The band of several devices together; empty when one of them has none. */
    private Optional<TimeCurrentBand> band(List<ComponentId> devices, Swap swap) {
        List<TimeCurrentBand> bands = devices.stream()
                .flatMap(id -> device(id, swap).stream())
                .flatMap(device -> TimeCurrentBand.of(input.tables(), device).stream())
                .toList();
        return bands.isEmpty() || bands.size() < devices.size()
                ? Optional.empty()
                : Optional.of(TimeCurrentBand.together(bands));
    }

    private Optional<ProtectiveDevice> device(ComponentId id, Swap swap) {
        return id.equals(swap.id()) ? Optional.of(swap.device()) : relying.device(id);
    }
}
