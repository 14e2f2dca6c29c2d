package org.ohmloom.size;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.Routes;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Draw;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.StateId;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/**
 * One load of constant current L, fed over the fuse F and wires in series, worked out by Ohm's law: every wire loses
 * I x listed resistance at 20 C, the fuse loses what it is told to. The wires are loose ends; only their ids matter:
 * one that begins with R lies on the way back.
 */
final class FedLoad {
    static final ComponentId FUSE = new ComponentId("F");
    static final ComponentId LOAD = new ComponentId("L");
    static final StateId STATE = new StateId("run");

    private final WireTables tables = WireTables.bundled();
    private final DesignRules rules;
    private final double amps;
    private final double limitVolts;
    private final double fuseVolts;
    private final ProtectiveDevice fuse;
    private final Map<WireId, Wire> wires = new LinkedHashMap<>();
    private final Map<WireId, Double> others = new LinkedHashMap<>();
    private final EngineMode mode;

    FedLoad(DesignRules rules, double amps, double limitVolts, double fuseVolts, ProtectiveDevice fuse) {
        this(rules, amps, limitVolts, fuseVolts, fuse, EngineMode.RUNNING);
    }

    FedLoad(
            DesignRules rules,
            double amps,
            double limitVolts,
            double fuseVolts,
            ProtectiveDevice fuse,
            EngineMode mode) {
        this.rules = rules;
        this.amps = amps;
        this.limitVolts = limitVolts;
        this.fuseVolts = fuseVolts;
        this.fuse = fuse;
        this.mode = mode;
    }

    static ProtectiveDevice fuse(double ratingAmps) {
        return new ProtectiveDevice(
                ProtectiveDevice.Kind.FUSE, "ISO 8820-3 type C", ratingAmps, OptionalDouble.empty());
    }

    /** A wire of that length without a size. */
    FedLoad wire(String id, double lengthMetres) {
        return wire(id, lengthMetres, null, false);
    }

    /** A wire of that length without a size that carries so much more for equipment not shown, A. */
    FedLoad trunk(String id, double lengthMetres, double otherAmps) {
        others.put(new WireId(id), otherAmps);
        return wire(id, lengthMetres);
    }

    /** A wire of that length and size. */
    FedLoad wire(String id, double lengthMetres, Gauge gauge, boolean existing) {
        Wire wire = new Wire(
                new WireId(id),
                new WireEnd.Loose(),
                new WireEnd.Loose(),
                Optional.ofNullable(gauge),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(lengthMetres),
                id.startsWith("R") ? SignalClass.RETURN : SignalClass.FEED,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                existing,
                Optional.empty());
        wires.put(wire.id(), wire);
        return this;
    }

    DesignBasis basis() {
        return tables.basis(rules.basis());
    }

    Harness harness() {
        return Harness.empty(TitleBlock.of("Fed load", "EX-FED"), rules)
                .withAll(wires.values())
                .with(Component.of("F", "Fuse", fuse))
                .with(Component.of("L", "Load", Load.of(new Draw.ConstantCurrent(amps, rules.nominalVolts()))))
                .with(OperatingState.of("run", "Run", mode));
    }

    /** The input with sizes solved as given, all wires relying on the fuse. */
    SizingInput input(ProvisionalSizes sizes) {
        return input(sizes, wire -> List.of(FUSE));
    }

    /** The input with sizes solved as given. */
    SizingInput input(ProvisionalSizes sizes, UpstreamDevices upstream) {
        SortedMap<StateId, Solution> solutions = new TreeMap<>();
        solutions.put(STATE, solution(sizes));
        return new SizingInput(harness(), tables, basis(), new Routes(new TreeMap<>()), solutions, upstream);
    }

    ProvisionalSizes largest() {
        return ProvisionalSizes.largest(harness(), tables, basis());
    }

    ProvisionalSizes minimum() {
        return ProvisionalSizes.minimum(harness(), tables, basis());
    }

    private Solution solution(ProvisionalSizes sizes) {
        ConductorResistance resistance = new ConductorResistance(tables, basis());
        SortedMap<BranchId, BranchFlow> flows = new TreeMap<>();
        List<BranchId> way = new ArrayList<>();
        List<BranchId> back = new ArrayList<>();
        double drop = fuseVolts;
        put(flows, "F.1-2", BranchKind.FUSE, Optional.of(FUSE), 0, amps, fuseVolts);
        way.add(new BranchId("F.1-2"));
        int point = 1;
        for (Wire wire : wires.values()) {
            double wireAmps = amps + others.getOrDefault(wire.id(), 0.0);
            double volts = wireAmps * resistance.ohms(wire, sizes.gauge(wire), wire.lengthMetres(), 20);
            put(flows, wire.id().value(), BranchKind.WIRE, Optional.of(wire.id()), point++, wireAmps, volts);
            (wire.signalClass() == SignalClass.RETURN ? back : way)
                    .add(new BranchId(wire.id().value()));
            drop += volts;
        }
        double volts = rules.nominalVolts() - drop;
        LoadVolts load = new LoadVolts(
                LOAD,
                new ComponentId("B"),
                amps,
                volts,
                drop,
                0,
                0,
                fuseVolts,
                new LoadVolts.OnState(amps, volts, drop, 0, 0, fuseVolts),
                limitVolts,
                way,
                back);
        Network network =
                new Network(STATE, new TreeMap<PointId, String>().navigableKeySet(), new TreeMap<>(), Optional.empty());
        return new Solution(
                network, List.of(), new TreeMap<>(), new TreeMap<>(), flows, new TreeMap<>(Map.of(LOAD, load)), 0, 0);
    }

    private void put(
            SortedMap<BranchId, BranchFlow> flows,
            String id,
            BranchKind kind,
            Optional<ElementId> element,
            int point,
            double amps,
            double volts) {
        Branch branch = new Branch(
                new BranchId(id),
                kind,
                new PointId("P" + point),
                new PointId("P" + (point + 1)),
                element,
                new Law.Resistance(Math.max(1e-9, volts / amps)));
        flows.put(
                branch.id(),
                new BranchFlow(
                        branch, "P0", OptionalDouble.of(volts / amps), amps, amps, amps, volts, volts, amps * volts));
    }
}
