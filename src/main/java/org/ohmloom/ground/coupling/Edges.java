package org.ohmloom.ground.coupling;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Islands;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Driver;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Clock;
import org.ohmloom.solve.Solution;

/**
 * The edges of voltage and current on the wires of one operating state.
 *
 * <p>The wires that hang together with the switched side of an output, over wires and contacts alone, move by the voltage over the
 * output while it is off. The current of any wire jumps by the difference of its mean currents in two stretches of a clock that
 * follow each other.
 *
 * @param byWire  the edge of each wire that has one
 * @param unknown outputs that switch in this state and whose edge time is not entered
 */
record Edges(SortedMap<WireId, Coupling.Edge> byWire, SortedSet<String> unknown) {

    /** Current edges smaller than this are left out, A. */
    private static final double LEAST_AMPS = 0.01;

    static Edges of(Harness harness, Solution solution) {
        SortedMap<WireId, Coupling.Edge> edges = new TreeMap<>();
        SortedSet<String> unknown = new TreeSet<>();
        Map<String, Double> soonest = new TreeMap<>();
        Islands pieces = Islands.of(solution.network(), Edges::isConductor);
        for (Branch branch : solution.network().branches().values()) {
            if (!(branch.law() instanceof Law.SwitchedResistance output)) {
                continue;
            }
            OptionalDouble seconds =
                    driver(harness, branch).map(Driver::edgeSeconds).orElse(OptionalDouble.empty());
            if (seconds.isEmpty()) {
                unknown.add(branch.id().value());
                continue;
            }
            soonest.merge(output.pulse().clock(), seconds.getAsDouble(), Math::min);
            PointId moving = movingEnd(solution, branch);
            double volts = overOutput(harness, solution, branch);
            wires(solution, pieces, moving)
                    .forEach(wire ->
                            edges.merge(wire, new Coupling.Edge(volts, 0, seconds.getAsDouble()), Coupling.Edge::with));
        }
        for (Clock clock : solution.duty().clocks()) {
            OptionalDouble seconds = soonest.entrySet().stream()
                    .filter(each ->
                            clock.id().equals(each.getKey()) || clock.id().startsWith(each.getKey() + " at "))
                    .mapToDouble(Map.Entry::getValue)
                    .min();
            seconds.ifPresent(time -> jumps(solution, clock)
                    .forEach((wire, amps) -> edges.merge(wire, new Coupling.Edge(0, amps, time), Coupling.Edge::with)));
        }
        return new Edges(edges, unknown);
    }

    private static boolean isConductor(Branch branch) {
        BranchKind.Part part = branch.kind().part();
        return (part == BranchKind.Part.CONDUCTOR || part == BranchKind.Part.CONTACT)
                && branch.law() instanceof Law.Resistance;
    }

    private static SortedMap<WireId, Double> jumps(Solution solution, Clock clock) {
        SortedMap<WireId, Double> jumps = new TreeMap<>();
        int count = clock.stretches().size();
        for (BranchFlow flow : solution.flows().values()) {
            if (flow.branch().kind() != BranchKind.WIRE || count < 2) {
                continue;
            }
            double largest = 0;
            for (int k = 0; k < count; k++) {
                double here = solution.duty().deviationAmps(flow.branch().id(), clock, k);
                double next = solution.duty().deviationAmps(flow.branch().id(), clock, (k + 1) % count);
                largest = Math.max(largest, Math.abs(next - here));
            }
            if (largest >= LEAST_AMPS) {
                jumps.put(new WireId(flow.branch().id().value()), largest);
            }
        }
        return jumps;
    }

    /** The side of an output that its load hangs on: the other one is a rail. */
    private static PointId movingEnd(Solution solution, Branch output) {
        Branch load = load(solution, output).orElse(output);
        Islands pieces = Islands.of(solution.network(), Edges::isConductor);
        int from = pieces.number(output.from()).orElse(-1);
        boolean highSide = pieces.number(load.from()).orElse(-2) != from
                && pieces.number(load.to()).orElse(-2) != from;
        return highSide ? output.to() : output.from();
    }

    /** The load that shares a piece of conductors with one side of the output alone. */
    private static Optional<Branch> load(Solution solution, Branch output) {
        Islands pieces = Islands.of(solution.network(), Edges::isConductor);
        int from = pieces.number(output.from()).orElse(-1);
        int to = pieces.number(output.to()).orElse(-1);
        return solution.network().branches().values().stream()
                .filter(branch -> branch.kind() == BranchKind.LOAD)
                .filter(branch -> {
                    int positive = pieces.number(branch.from()).orElse(-2);
                    int negative = pieces.number(branch.to()).orElse(-2);
                    return positive == to || negative == from;
                })
                .findFirst();
    }

    /** Voltage over an output while it is off: what its load has while it is on, or what its clamp holds. */
    private static double overOutput(Harness harness, Solution solution, Branch output) {
        double clampVolts = driver(harness, output)
                .flatMap(Driver::clamp)
                .map(Driver.Clamp::clampVolts)
                .orElse(0.0);
        double loadVolts = load(solution, output)
                .flatMap(load -> solution.flow(load.id()))
                .map(flow -> Math.abs(flow.onDropVolts()))
                .orElse(harness.rules().nominalVolts());
        return Math.max(clampVolts, loadVolts);
    }

    private static List<WireId> wires(Solution solution, Islands pieces, PointId point) {
        int piece = pieces.number(point).orElse(-1);
        List<WireId> wires = new ArrayList<>();
        Set<BranchId> seen = new HashSet<>();
        for (Branch branch : solution.network().branches().values()) {
            if (branch.kind() == BranchKind.WIRE
                    && pieces.number(branch.from()).orElse(-2) == piece
                    && seen.add(branch.id())) {
                wires.add(new WireId(branch.id().value()));
            }
        }
        return wires;
    }

    private static Optional<Driver> driver(Harness harness, Branch output) {
        Optional<Component> component = output.element()
                .filter(org.ohmloom.model.ComponentId.class::isInstance)
                .flatMap(id -> harness.components().find((org.ohmloom.model.ComponentId) id));
        if (component.isEmpty()) {
            return Optional.empty();
        }
        if (component.get().device() instanceof SolidStateOutput device) {
            return device.driver();
        }
        if (component.get().device() instanceof ControlUnit unit) {
            return unit.pins().stream()
                    .filter(pin -> output.id().value().equals(component.get().id() + "." + pin.name()))
                    .findFirst()
                    .flatMap(Pin::driver);
        }
        return Optional.empty();
    }
}
