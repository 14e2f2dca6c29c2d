package org.ohmloom.solve;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.PointId;
import org.ohmloom.words.Text;

/** One island of a {@link WarmNetwork} with the voltages it was last solved to. */
final class WarmPart {

    private final Circuit circuit;
    private final IslandSolver solver;
    private final Characteristic[] laws;

    /** Branches that draw by what another branch gives. */
    private final SortedMap<Integer, Law> inputs = new TreeMap<>();

    private final Map<BranchId, Integer> sources = new HashMap<>();
    private IslandMoment moment =
            IslandMoment.failed(new Failure(IslandStatus.NOT_CONVERGED, Text.NONE, Optional.empty()));

    WarmPart(Circuit circuit, BooleanSupplier cancelled) {
        this.circuit = circuit;
        solver = new IslandSolver(circuit, Optional.empty(), cancelled);
        laws = new Characteristic[circuit.branches().size()];
        circuit.branches().forEach(branch -> set(branch.id(), branch.law()));
    }

    /** Changes the law of a branch for the solutions to come. */
    void set(BranchId branch, Law law) {
        int number = circuit.number(branch);
        laws[number] = Characteristics.of(law, new Outputs());
        inputs.remove(number);
        sources.remove(branch);
        if (law instanceof Law.PowerOf || law instanceof Law.CurrentOf) {
            inputs.put(number, law);
        } else if (law instanceof Law.VoltageSource) {
            sources.put(branch, number);
        }
    }

    /** Solves, given what the outputs give that its inputs feed. */
    void solve(Outputs outputs) {
        inputs.forEach((branch, law) -> laws[branch] = Characteristics.of(law, outputs));
        moment = solver.solve(laws);
    }

    /** Why it has no solution, if it has none. */
    Optional<Failure> failure() {
        return moment.failure();
    }

    /** Whether anything in it depends on what an output gives. */
    boolean hasInputs() {
        return !inputs.isEmpty();
    }

    /** Takes down what its sources give. */
    void give(Outputs outputs) {
        if (moment.failure().isEmpty()) {
            sources.forEach((id, number) -> {
                double amps = moment.amps().value(number);
                double volts = -circuit.along(number, moment.volts()).value();
                outputs.put(id, volts * amps, amps);
            });
        }
    }

    /** An input whose output gives something else than it was solved with. */
    Optional<Branch> unsettled(Outputs before, Outputs now) {
        return inputs.entrySet().stream()
                .filter(input -> !before.of(output(input.getValue())).agreesWith(now.of(output(input.getValue()))))
                .map(input -> circuit.branches().get(input.getKey()))
                .findFirst();
    }

    private static BranchId output(Law input) {
        return input instanceof Law.PowerOf power ? power.output() : ((Law.CurrentOf) input).output();
    }

    /** V(from) - V(to) of a branch, V. */
    double along(BranchId branch) {
        return circuit.along(circuit.number(branch), moment.volts()).value();
    }

    /** Current of a branch, A. */
    double amps(BranchId branch) {
        return moment.amps().value(circuit.number(branch));
    }

    /** Voltage of a point against the datum of the island, V. */
    double volts(PointId point) {
        int number = circuit.number(point);
        return moment.volts().value(number);
    }
}
