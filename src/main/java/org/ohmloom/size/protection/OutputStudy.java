package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ElectronicLimit;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** Finds outputs with an electronic limit, what lies behind each, and whether it stands a fault there. */
final class OutputStudy {
    private final ProtectionInput input;
    private final ConductorLimits limits;
    private final FaultNetworks networks;
    private final Relying relying;
    private final List<FaultPlace> places;
    private final Map<ComponentId, Double> caps = new HashMap<>();

    OutputStudy(
            ProtectionInput input,
            ConductorLimits limits,
            FaultNetworks networks,
            Relying relying,
            List<FaultPlace> places) {
        this.input = input;
        this.limits = limits;
        this.networks = networks;
        this.relying = relying;
        this.places = places;
    }

    List<OutputProtection> study() {
        List<OutputProtection> outputs = new ArrayList<>();
        LimitedOutputs.of(input.harness(), input.upstream())
                .forEach((branch, limit) -> outputs.add(study(branch, limit)));
        return outputs;
    }

    /** The smallest limit before a device, A; empty when none stands before it. */
    OptionalDouble capAmps(ComponentId device) {
        Double cap = caps.get(device);
        return cap == null ? OptionalDouble.empty() : OptionalDouble.of(cap);
    }

    private OutputProtection study(Branch branch, ElectronicLimit limit) {
        SortedSet<BranchId> behind = input.upstream().onlyBehind(branch.id());
        double heating = LimitedOutputs.heatingAmps(limit);
        List<OutputProtection.Conductor> conductors = new ArrayList<>();
        List<ComponentId> blind = new ArrayList<>();
        for (BranchId id : behind) {
            Branch each = input.drawn().branch(id).orElseThrow();
            if (each.kind() == BranchKind.WIRE) {
                limits.of(input.harness().wires().get(new WireId(id.value())))
                        .map(conductor -> judge(conductor, limit, heating, foreverAmps(each)))
                        .ifPresent(conductors::add);
            } else if (each.kind() == BranchKind.FUSE || each.kind() == BranchKind.BREAKER) {
                ComponentId device = (ComponentId) each.element().orElseThrow();
                caps.merge(device, limit.limitAmps(), Math::min);
                if (isBlind(device, limit)) {
                    blind.add(device);
                }
            }
        }
        conductors.sort(Comparator.comparingDouble(each -> each.limit().continuousCelsius() - each.hottestCelsius()));
        OptionalDouble fault = faultAmps(branch, behind);
        return new OutputProtection(
                (ComponentId) branch.element().orElseThrow(),
                branch.id().value(),
                limit,
                heating,
                fault,
                conductors,
                blind,
                sentence(branch, limit, heating, fault));
    }

    private OutputProtection.Conductor judge(
            ConductorLimit conductor, ElectronicLimit limit, double heating, double foreverAmps) {
        double base = heating > 0 ? conductor.heating().steadyCelsius(heating) : conductor.runningCelsius();
        double hottest = base;
        if (limit.tripSeconds().isPresent() && Double.isFinite(base)) {
            hottest = Adiabatic.endCelsius(
                    conductor.copper(),
                    conductor.areaMm2(),
                    limit.limitAmps(),
                    base,
                    limit.tripSeconds().getAsDouble());
        }
        boolean stands = heating > foreverAmps
                || base <= conductor.continuousCelsius() * (1 + 1e-9)
                        && hottest
                                <= Math.max(
                                        conductor.continuousCelsius(),
                                        conductor.shortTime().overload().value());
        return new OutputProtection.Conductor(conductor.wire(), conductor, hottest, stands);
    }

    /** What the devices before a wire carry for ever, A: above, they open before the limit heats the wire for good. */
    private double foreverAmps(Branch wire) {
        return relying.on(wire.from()).stream()
                .flatMap(id -> relying.device(id).stream())
                .flatMap(device -> TimeCurrentBand.of(input.tables(), device).stream())
                .mapToDouble(TimeCurrentBand::foreverAmps)
                .max()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Whether the limit does not open a fuse, or opens the output first. */
    private boolean isBlind(ComponentId device, ElectronicLimit limit) {
        return relying.device(device)
                .flatMap(fuse -> TimeCurrentBand.of(input.tables(), fuse))
                .map(band -> {
                    OptionalDouble opens = band.opensWithinSeconds(limit.limitAmps());
                    return opens.isEmpty()
                            || opens.getAsDouble() > limit.tripSeconds().orElse(FaultNetworks.askedSeconds(input));
                })
                .orElse(false);
    }

    /** The smallest fault at a load behind the output if it did not limit. */
    private OptionalDouble faultAmps(Branch output, SortedSet<BranchId> behind) {
        return places.stream()
                .filter(place -> behind.stream()
                        .flatMap(id -> input.drawn().branch(id).stream())
                        .anyMatch(branch -> branch.kind().part() == BranchKind.Part.LOAD
                                && (branch.from().equals(place.at())
                                        || branch.to().equals(place.at()))))
                .flatMap(
                        place -> relying.sources(place.at()).stream()
                                .flatMap(source -> networks
                                        .hot()
                                        .flows(place.at(), place.to(), FaultNetwork.FAULT_OHMS, List.of(source), false)
                                        .stream()))
                .mapToDouble(flows -> flows.through(output.id()))
                .filter(amps -> amps > 0)
                .min();
    }

    private static Text sentence(Branch branch, ElectronicLimit limit, double heating, OptionalDouble fault) {
        Text sentence = CheckTexts.text("output", branch.id(), Formats.amps(limit.limitAmps()), trip(limit));
        if (fault.isPresent()) {
            sentence = CheckTexts.text("output.without", sentence, Formats.amps(fault.getAsDouble()));
        }
        return heating > 0 ? CheckTexts.text("output.heats", sentence, Formats.amps(heating)) : sentence;
    }

    private static Text trip(ElectronicLimit limit) {
        if (limit.tripSeconds().isEmpty()) {
            return CheckTexts.text("output.holds");
        }
        String after = Formats.seconds(limit.tripSeconds().getAsDouble());
        return limit.retrySeconds().isEmpty()
                ? CheckTexts.text("output.stays-open", after)
                : CheckTexts.text(
                        "output.tries-again",
                        after,
                        Formats.seconds(limit.retrySeconds().getAsDouble()));
    }
}
