package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Driver;
import org.ohmloom.model.ElectronicLimit;
import org.ohmloom.model.Pin;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Formats;

/** Finds outputs with an electronic limit, what lies behind each, and whether it stands a fault there. */
final class OutputStudy {
    private final ProtectionInput input;
    private final ConductorLimits limits;
    private final FaultNetworks networks;
    private final Relying relying;
    private final List<FaultPlace> places;

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
        for (Branch branch : input.drawn().branches().values()) {
            limit(branch).ifPresent(limit -> outputs.add(study(branch, limit)));
        }
        return outputs;
    }

    /** The limit of an output's branch. */
    private Optional<ElectronicLimit> limit(Branch branch) {
        if (branch.kind() != BranchKind.OUTPUT_PIN && branch.kind() != BranchKind.SOLID_STATE_OUTPUT) {
            return Optional.empty();
        }
        return branch.element()
                .filter(ComponentId.class::isInstance)
                .flatMap(id -> input.harness().components().find((ComponentId) id))
                .flatMap(component -> driver(component, branch))
                .flatMap(Driver::limit);
    }

    private static Optional<Driver> driver(Component component, Branch branch) {
        if (component.device() instanceof SolidStateOutput output) {
            return output.driver();
        }
        return component.device() instanceof ControlUnit unit
                ? unit.pins().stream()
                        .filter(pin -> branch.id().value().equals(component.id() + "." + pin.name()))
                        .map(Pin::driver)
                        .flatMap(Optional::stream)
                        .findFirst()
                : Optional.empty();
    }

    private OutputProtection study(Branch branch, ElectronicLimit limit) {
        SortedSet<BranchId> behind = input.upstream().onlyBehind(branch.id());
        double heating = heatingAmps(limit);
        List<OutputProtection.Conductor> conductors = new ArrayList<>();
        List<ComponentId> blind = new ArrayList<>();
        for (BranchId id : behind) {
            Branch each = input.drawn().branch(id).orElseThrow();
            if (each.kind() == BranchKind.WIRE) {
                limits.of(input.harness().wires().get(new WireId(id.value())))
                        .ifPresent(conductor -> conductors.add(judge(conductor, limit, heating)));
            } else if (each.kind() == BranchKind.FUSE || each.kind() == BranchKind.BREAKER) {
                each.element()
                        .map(ComponentId.class::cast)
                        .filter(device -> isBlind(device, limit))
                        .ifPresent(blind::add);
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

    /** RMS current of a lasting fault: limit x sqrt(trip / (trip + retry)). */
    private static double heatingAmps(ElectronicLimit limit) {
        if (limit.tripSeconds().isEmpty()) {
            return limit.limitAmps();
        }
        double trip = limit.tripSeconds().getAsDouble();
        return limit.retrySeconds().isEmpty()
                ? 0
                : limit.limitAmps()
                        * Math.sqrt(trip / (trip + limit.retrySeconds().getAsDouble()));
    }

    private OutputProtection.Conductor judge(ConductorLimit conductor, ElectronicLimit limit, double heating) {
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
        boolean stands = base <= conductor.continuousCelsius() * (1 + 1e-9)
                && hottest
                        <= Math.max(
                                conductor.continuousCelsius(),
                                conductor.shortTime().overload().value());
        return new OutputProtection.Conductor(conductor.wire(), conductor, hottest, stands);
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

    private static String sentence(Branch branch, ElectronicLimit limit, double heating, OptionalDouble fault) {
        String trip = limit.tripSeconds().isEmpty()
                ? "holds it for good"
                : "opens after " + Formats.seconds(limit.tripSeconds().getAsDouble())
                        + (limit.retrySeconds().isEmpty()
                                ? " and stays open"
                                : ", tries again after "
                                        + Formats.seconds(limit.retrySeconds().getAsDouble()));
        return branch.id() + " limits to " + Formats.amps(limit.limitAmps()) + " and " + trip
                + (fault.isPresent()
                        ? "; without it a short circuit behind it would draw " + Formats.amps(fault.getAsDouble())
                        : "")
                + (heating > 0 ? "; a lasting fault heats like " + Formats.amps(heating) : "");
    }
}
