package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.PointId;

/**
 * Solves all powered islands in one moment after another, each starting from the voltages of the one before.
 *
 * <p>A converter takes from one island what it gives in another, or in the same. Each round solves the islands with what the
 * outputs gave in the round before; rounds repeat until the outputs agree with them to 13 digits. Usually the output's
 * island does not notice its input at all and the second round is the last; through a common ground wire it does a
 * little, and each round gains some digits. An island that had no solution in one moment is left alone in the others.
 */
final class MomentSolver {

    private static final int MOST_ROUNDS = 100;

    private final List<Optional<Circuit>> circuits;
    private final List<Optional<Characteristics>> characteristics = new ArrayList<>();
    private final List<List<Branch>> inputs = new ArrayList<>();
    private final List<Optional<IslandSolver>> solvers = new ArrayList<>();
    private final List<Optional<IslandMoment>> results = new ArrayList<>();
    private Outputs outputs;
    private List<Part> at = List.of();
    private Optional<ChokeLevels> levels = Optional.empty();

    /**
     * Prepares the moments of circuits.
     *
     * @param circuits  circuit of each island that is powered
     * @param clocks    all clocks
     * @param hint      a solved moment that may be near
     * @param cancelled asks to stop
     */
    MomentSolver(
            List<Optional<Circuit>> circuits,
            List<Clock> clocks,
            Optional<MomentSolver> hint,
            BooleanSupplier cancelled) {
        this.circuits = circuits;
        this.outputs = hint.map(moment -> moment.outputs).orElseGet(Outputs::new);
        Optional<Map<PointId, Precise>> near =
                hint.filter(moment -> !moment.isOfMeshesOf(circuits)).map(MomentSolver::pointVolts);
        for (Optional<Circuit> circuit : circuits) {
            int island = solvers.size();
            characteristics.add(circuit.map(each -> new Characteristics(each, clocks)));
            inputs.add(circuit.map(Circuit::branches).orElse(List.of()).stream()
                    .filter(branch -> branch.law() instanceof Law.PowerOf || branch.law() instanceof Law.CurrentOf)
                    .toList());
            Optional<IslandSolver> like =
                    near.isPresent() ? Optional.empty() : hint.flatMap(each -> each.solvers.get(island));
            solvers.add(circuit.map(each -> like.map(other -> new IslandSolver(each, other, cancelled))
                    .orElseGet(() -> new IslandSolver(each, near.map(each::volts), cancelled))));
            results.add(Optional.empty());
        }
    }

    /** Whether it solves the same circuits but for their laws. */
    private boolean isOfMeshesOf(List<Optional<Circuit>> others) {
        return circuits.stream()
                .map(circuit -> circuit.map(Circuit::mesh))
                .toList()
                .equals(others.stream()
                        .map(circuit -> circuit.map(Circuit::mesh))
                        .toList());
    }

    private Map<PointId, Precise> pointVolts() {
        Map<PointId, Precise> volts = new HashMap<>();
        for (int island = 0; island < circuits.size(); island++) {
            Optional<IslandMoment> result =
                    results.get(island).filter(each -> each.failure().isEmpty());
            if (result.isPresent()) {
                List<PointId> points = circuits.get(island).orElseThrow().points();
                for (int point = 0; point < points.size(); point++) {
                    volts.put(points.get(point), result.get().volts().get(point));
                }
            }
        }
        return volts;
    }

    /**
     * Solves a moment; one result for each island that is powered.
     *
     * @param moment the part each clock is in
     * @param chokes what inductive loads and capacitors are; empty to take the loads at their running points
     */
    List<Optional<IslandMoment>> solve(List<Part> moment, Optional<ChokeLevels> chokes) {
        at = moment;
        levels = chokes;
        for (int island = 0; island < circuits.size(); island++) {
            solve(island);
        }
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Outputs now = given();
            if (unsettled(outputs, now).isEmpty()) {
                return results;
            }
            outputs = now;
            for (int island = 0; island < circuits.size(); island++) {
                if (!inputs.get(island).isEmpty()) {
                    solve(island);
                }
            }
        }
        giveUp(unsettled(outputs, given()));
        return results;
    }

    /** Starts from these results, one for each island, when it solves next. */
    void startFrom(List<Optional<IslandMoment>> near) {
        for (int island = 0; island < near.size(); island++) {
            Optional<IslandMoment> moment =
                    near.get(island).filter(each -> each.failure().isEmpty());
            if (moment.isPresent()) {
                solvers.get(island).orElseThrow().startFrom(moment.get());
            }
        }
    }

    /** Solves from now on no more exactly than a search needs, or to the last digit again. */
    void roughly(boolean rough) {
        solvers.forEach(solver -> solver.ifPresent(each -> each.roughly(rough)));
    }

    /** Takes converters to give nothing, as at the beginning. */
    void forgetOutputs() {
        outputs = new Outputs();
    }

    /** Tries islands again that had no solution. */
    void forgive() {
        results.replaceAll(result -> result.filter(each -> each.failure().isEmpty()));
    }

    private void solve(int island) {
        boolean failed = results.get(island).flatMap(IslandMoment::failure).isPresent();
        if (circuits.get(island).isPresent() && !failed) {
            Characteristic[] laws = characteristics.get(island).orElseThrow().at(at, levels, outputs);
            results.set(island, solvers.get(island).map(solver -> solver.solve(laws)));
        }
    }

    /**
     * What small currents do to an island round the moment just solved, see {@link IslandSolver#answers}.
     *
     * @param island number of the island
     * @param kept   for each inductive load the current each branch of the island is forced to change by, A
     */
    List<RippleFlow> answers(int island, SortedMap<Integer, double[]> kept) {
        Optional<IslandMoment> at =
                results.get(island).filter(each -> each.failure().isEmpty());
        return at.isEmpty() || kept.isEmpty()
                ? List.of()
                : solvers.get(island).orElseThrow().answers(at.get(), kept);
    }

    private Outputs given() {
        Outputs outputs = new Outputs();
        if (inputs.stream().allMatch(List::isEmpty)) {
            return outputs;
        }
        for (int island = 0; island < circuits.size(); island++) {
            Optional<IslandMoment> result =
                    results.get(island).filter(each -> each.failure().isEmpty());
            if (result.isPresent()) {
                Circuit circuit = circuits.get(island).get();
                for (int branch = 0; branch < circuit.branches().size(); branch++) {
                    if (circuit.branches().get(branch).law() instanceof Law.VoltageSource) {
                        double amps = result.get().amps().value(branch);
                        double volts =
                                -circuit.along(branch, result.get().volts()).value();
                        outputs.put(circuit.branches().get(branch).id(), volts * amps, amps);
                    }
                }
            }
        }
        return outputs;
    }

    /** The inputs whose outputs give something else than they were solved with. */
    private List<Branch> unsettled(Outputs before, Outputs now) {
        List<Branch> unsettled = new ArrayList<>();
        for (List<Branch> island : inputs) {
            for (Branch input : island) {
                BranchId output = input.law() instanceof Law.PowerOf power
                        ? power.output()
                        : ((Law.CurrentOf) input.law()).output();
                if (!before.of(output).agreesWith(now.of(output))) {
                    unsettled.add(input);
                }
            }
        }
        return unsettled;
    }

    private void giveUp(List<Branch> unsettled) {
        for (int island = 0; island < circuits.size(); island++) {
            for (Branch input : inputs.get(island)) {
                if (unsettled.contains(input)) {
                    results.set(island, Optional.of(IslandMoment.failed(Failure.circling(input))));
                    break;
                }
            }
        }
    }
}
