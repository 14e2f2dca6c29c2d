package org.ohmloom.ground.coupling;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Driver;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.Clock;
import org.ohmloom.solve.Solution;

/**
 * The edges of voltage and current on the wires of one operating state.
 *
 * <p>The wires that hang together with the switched side of an output, over wires and contacts alone, move by the voltage over the
 * output while it is off. The current of any wire jumps by the difference of its mean currents in two stretches of a clock that
 * follow each other.
 *
 * @param byWire  the edges of each wire that has some, one for each clock that moves it
 * @param unknown outputs that switch in this state and whose edge time is not entered
 */
record Edges(SortedMap<WireId, List<Coupling.Edge>> byWire, SortedSet<String> unknown) {

    /** Current edges smaller than this are left out, A. */
    private static final double LEAST_AMPS = 0.01;

    static Edges of(Harness harness, Solution solution) {
        return new Search(harness, solution).run();
    }

    /** One search through a state. */
    private static final class Search {
        private final Harness harness;
        private final Solution solution;
        private final Islands pieces;
        private final SortedMap<WireId, SortedMap<String, Coupling.Edge>> edges = new TreeMap<>();
        private final SortedSet<String> unknown = new TreeSet<>();

        Search(Harness harness, Solution solution) {
            this.harness = harness;
            this.solution = solution;
            this.pieces = Islands.of(solution.network(), Branch::isPlainResistance);
        }

        Edges run() {
            Map<String, Double> soonest = new TreeMap<>();
            for (Branch branch : solution.network().branches().values()) {
                if (branch.law() instanceof Law.SwitchedResistance output) {
                    String clock = output.pulse().clock();
                    output(branch, clock).ifPresent(seconds -> soonest.merge(clock, seconds, Math::min));
                }
            }
            for (Clock clock : solution.duty().clocks()) {
                soonest.entrySet().stream()
                        .filter(each ->
                                clock.id().equals(each.getKey()) || clock.id().startsWith(each.getKey() + " at "))
                        .min(Map.Entry.comparingByValue())
                        .ifPresent(each -> jumps(clock, each.getKey(), each.getValue()));
            }
            SortedMap<WireId, List<Coupling.Edge>> byWire = new TreeMap<>();
            edges.forEach((wire, byClock) -> byWire.put(wire, List.copyOf(byClock.values())));
            return new Edges(byWire, unknown);
        }

        /** What two clocks do comes at different times and is kept apart; of one clock the worst counts. */
        private void add(BranchId wire, String clock, Coupling.Edge edge) {
            edges.computeIfAbsent(new WireId(wire.value()), each -> new TreeMap<>())
                    .merge(clock, edge, Coupling.Edge::with);
        }

        /** Takes down the edges of voltage an output makes; tells the time they take, s, if it is known. */
        private Optional<Double> output(Branch output, String clock) {
            Optional<Driver> driver = output.element()
                    .filter(ComponentId.class::isInstance)
                    .flatMap(id -> harness.components().find((ComponentId) id))
                    .flatMap(component -> component.driver(output.id().value()));
            OptionalDouble seconds = driver.map(Driver::edgeSeconds).orElse(OptionalDouble.empty());
            if (seconds.isEmpty()) {
                unknown.add(output.element()
                        .map(ElementId::value)
                        .orElse(output.id().value()));
                return Optional.empty();
            }
            Optional<Branch> load = load(output);
            double volts = overOutput(driver, load);
            int moving = piece(movingEnd(output, load));
            for (Branch branch : solution.network().branches().values()) {
                if (branch.kind() == BranchKind.WIRE && piece(branch.from()) == moving) {
                    add(branch.id(), clock, new Coupling.Edge(volts, 0, seconds.getAsDouble()));
                }
            }
            return Optional.of(seconds.getAsDouble());
        }

        /** Takes down the edges of current a clock makes. */
        private void jumps(Clock clock, String name, double seconds) {
            int count = clock.stretches().size();
            for (Branch branch : solution.network().branches().values()) {
                double largest = 0;
                for (int k = 0; k < count && branch.kind() == BranchKind.WIRE; k++) {
                    double here = solution.duty().deviationAmps(branch.id(), clock, k);
                    double next = solution.duty().deviationAmps(branch.id(), clock, (k + 1) % count);
                    largest = Math.max(largest, Math.abs(next - here));
                }
                if (largest >= LEAST_AMPS) {
                    add(branch.id(), name, new Coupling.Edge(0, largest, seconds));
                }
            }
        }

        private int piece(PointId point) {
            return pieces.number(point).orElseThrow();
        }

        /** The load that shares a piece of conductors with one side of the output alone. */
        private Optional<Branch> load(Branch output) {
            return solution.network().branches().values().stream()
                    .filter(branch -> branch.kind() == BranchKind.LOAD)
                    .filter(branch ->
                            pieces.together(branch.from(), output.to()) || pieces.together(branch.to(), output.from()))
                    .findFirst();
        }

        /** The side of an output that its load hangs on: the other one is a rail. */
        private PointId movingEnd(Branch output, Optional<Branch> load) {
            boolean highSide = load.isPresent()
                    && !pieces.together(load.get().from(), output.from())
                    && !pieces.together(load.get().to(), output.from());
            return highSide ? output.to() : output.from();
        }

        /** Voltage over an output while it is off: what its load has while it is on, or what its clamp holds. */
        private double overOutput(Optional<Driver> driver, Optional<Branch> load) {
            double clampVolts =
                    driver.flatMap(Driver::clamp).map(Driver.Clamp::clampVolts).orElse(0.0);
            double loadVolts = load.flatMap(branch -> solution.flow(branch.id()))
                    .map(flow -> Math.abs(flow.onDropVolts()))
                    .orElse(harness.rules().nominalVolts());
            return Math.max(clampVolts, loadVolts);
        }
    }
}
