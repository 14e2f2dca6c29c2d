package org.ohmloom.size;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.ohmloom.heat.Ampacities;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.BundleHeat;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.heat.LoadedConductors;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.size.protection.ConductorLimit;
import org.ohmloom.size.protection.FeedingDevices;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/** What all requirements of one sizing share, worked out once; for one thread at a time. */
final class SizingFacts {
    private final SizingInput input;
    private final ConductorResistance resistance;
    private final Ampacities ampacities;
    private final WorstCurrents worst;
    private final Optional<BundleHeat.Neighbours> neighbours;
    private final LoadedConductors loaded;
    private final ReturnDevices returns;
    private final Map<WireId, Map<Gauge, Optional<Ampacity>>> known = new HashMap<>();
    private final Map<WireId, Map<Gauge, Optional<ConductorLimit>>> overload = new HashMap<>();
    private final Map<String, ConductorFamily> families = new HashMap<>();

    SizingFacts(SizingInput input) {
        this.input = input;
        Harness harness = input.harness();
        resistance = new ConductorResistance(input.tables(), input.basis());
        ampacities = input.settling()
                .map(settling -> settling.heat().ampacities())
                .orElseGet(() -> new Ampacities(harness, input.tables(), input.basis(), input.routes()));
        returns = new ReturnDevices(input);
        neighbours = input.settling()
                .map(settling -> settling.neighbours(each -> worst(each).amps()));
        worst = new WorstCurrents(input.solutions(), ContinuousStates.of(harness));
        Map<WireId, Double> amps = new HashMap<>();
        harness.wires().ids().forEach(id -> amps.put(id, worst.of(id).amps()));
        loaded = LoadedConductors.of(harness, input.routes(), amps);
    }

    SizingInput input() {
        return input;
    }

    Harness harness() {
        return input.harness();
    }

    /** The largest lasting RMS current of a wire. */
    WorstCurrents.Worst worst(Wire wire) {
        return worst.of(wire.id());
    }

    /** The largest lasting RMS current of a component's branches. */
    WorstCurrents.Worst worst(ComponentId component) {
        return worst.of(component);
    }

    /**
     * The sizes a wire's is chosen from: its family in the system of its own size, the design rules' when it has none, as
     * far as they are in stock.
     */
    ConductorFamily family(Wire wire) {
        GaugeSystem system =
                wire.gauge().map(Gauge::system).orElse(harness().rules().gaugeSystem());
        ConductorFamily whole = resistance.family(wire, system);
        return families.computeIfAbsent(whole.id(), id -> AllowedSizes.of(harness(), whole));
    }

    /** What a wire may carry with a size. */
    Optional<Ampacity> ampacity(Wire wire, Gauge gauge) {
        return known.computeIfAbsent(wire.id(), id -> new HashMap<>())
                .computeIfAbsent(gauge, size -> ampacities.of(wire, size, loaded.alongside(wire)));
    }

    /** What a wire may carry with a size, A; 0 when no table says. */
    double ampacityAmps(Wire wire, Gauge gauge) {
        return ampacity(wire, gauge).map(Ampacity::limitAmps).orElse(0.0);
    }

    /** Name of the wire's insulation. */
    String insulation(Wire wire) {
        return wire.insulation().orElse(harness().rules().insulation());
    }

    /** Temperature of a wire with a size at its largest lasting current, deg C. */
    double celsius(Wire wire, Gauge gauge) {
        return ampacities.celsius(
                wire, gauge, ampacity(wire, gauge), worst(wire).amps());
    }

    /** By how much an RMS current warms a wire with a size above the air where it lies, K. */
    double riseKelvin(Wire wire, Gauge gauge, double rmsAmps) {
        return ampacities.celsius(wire, gauge, ampacity(wire, gauge), rmsAmps) - ampacities.ambientCelsius(wire);
    }

    /** By how much a wire with a size is above the air at the limit of what it may carry, K; 0 when no table says. */
    double fullRiseKelvin(Wire wire, Gauge gauge) {
        return ampacity(wire, gauge)
                .map(each -> each.limitCelsius() - each.ambientCelsius())
                .orElse(0.0);
    }

    /** Resistance per metre of a size so much warmer than the air where it lies, ohm/m. */
    double ohmsPerMetre(Wire wire, ConductorRow row, double riseKelvin) {
        return row.ohmsPerMetreAt20Celsius() * resistance.ratio(ampacities.ambientCelsius(wire) + riseKelvin);
    }

    /** The row of a wire's family for a size, in stock or not. */
    ConductorRow row(Wire wire, Gauge gauge) {
        return resistance.row(wire, gauge);
    }

    /** Resistance per metre of a size at that temperature, ohm/m. */
    double ohmsPerMetre(Wire wire, ConductorRow row) {
        return row.ohmsPerMetreAt20Celsius() * resistance.ratio(celsius(wire, row.gauge()));
    }

    /** The protective devices a wire relies on: those upstream, for a return the one that limits its loads. */
    List<ComponentId> devices(Wire wire) {
        List<ComponentId> upstream = input.upstream().of(wire.id());
        return (upstream.isEmpty() ? returns.of(wire.id()) : upstream)
                .stream().filter(id -> device(id).isPresent()).toList();
    }

    /** The devices a wire relies on, in groups whose currents add. */
    List<List<ComponentId>> deviceGroups(Wire wire) {
        List<List<ComponentId>> groups = input.upstream().groups(wire.id());
        return groups.isEmpty() ? devices(wire).stream().map(List::of).toList() : groups;
    }

    /** What feeds a wire by each of its ends; for a return the device that limits its loads. */
    List<FeedingDevices> feeding(Wire wire) {
        List<FeedingDevices> upstream = input.upstream().feeding(input.tables(), wire.id());
        return upstream.isEmpty() && !devices(wire).isEmpty()
                ? List.of(new FeedingDevices(new TreeSet<>(devices(wire)), 0))
                : upstream;
    }

    /**
     * What a wire with a size stands, settling where the heat balance of its bundle says, its neighbours at their largest
     * lasting currents; by the tables where it lies nowhere. Empty when no table has its insulation or its short-time limit.
     */
    Optional<ConductorLimit> overloadLimit(Wire wire, ConductorRow row) {
        return overload.computeIfAbsent(wire.id(), id -> new HashMap<>())
                .computeIfAbsent(row.gauge(), gauge -> ampacity(wire, gauge).flatMap(each -> settled(wire, row, each)));
    }

    private Optional<ConductorLimit> settled(Wire wire, ConductorRow row, Ampacity ampacity) {
        double amps = ampacity.limitAmps();
        OptionalDouble settles = neighbours
                .flatMap(found -> found.settle(wire, row.gauge(), amps))
                .filter(found -> !found.runaway())
                .map(found -> OptionalDouble.of(found.celsius()))
                .orElse(OptionalDouble.empty());
        return limit(wire, row, ampacity, celsius(wire, row.gauge()))
                .map(limit -> settles.isEmpty()
                        ? limit
                        : limit.settlingAt(settles.getAsDouble(), amps, row.ohmsPerMetreAt20Celsius()))
                .map(limit -> limit.startingAt(
                        limit.heating().steadyCelsius(worst(wire).amps())));
    }

    private Optional<ConductorLimit> limit(Wire wire, ConductorRow row, Ampacity ampacity, double runningCelsius) {
        return ConductorLimit.of(input.tables(), wire.id(), insulation(wire), row, ampacity, runningCelsius);
    }

    /** Their ratings, added within a group, the largest of all groups, A; a device of the group may be tried at another. */
    double largestTogetherAmps(Wire wire, ToDoubleFunction<ComponentId> ratingAmps) {
        return deviceGroups(wire).stream()
                .mapToDouble(group -> group.stream().mapToDouble(ratingAmps).sum())
                .max()
                .orElse(0);
    }

    /** The protective device of that identity. */
    Optional<ProtectiveDevice> device(ComponentId id) {
        return harness()
                .components()
                .find(id)
                .map(component -> component.device())
                .filter(ProtectiveDevice.class::isInstance)
                .map(ProtectiveDevice.class::cast);
    }
}
