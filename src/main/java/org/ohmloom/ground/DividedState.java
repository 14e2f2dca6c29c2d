package org.ohmloom.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.SwitchedLoads;
import org.ohmloom.ground.GroundReading.CurrentShare;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Clock;
import org.ohmloom.solve.Solution;

/**
 * One solved state, able to tell whose current flows in its conductors.
 *
 * @param solution    the solution
 * @param attribution divides its voltages and currents
 * @param causes      who makes the currents they are divided into
 */
record DividedState(Solution solution, Attribution attribution, Causes causes) {

    /** The states of a harness. */
    static SortedMap<StateId, DividedState> all(
            Network drawn, SortedMap<StateId, Solution> solutions, BooleanSupplier cancelled) {
        List<SwitchedLoads.SwitchedLoad> switched = SwitchedLoads.of(drawn);
        SortedMap<StateId, DividedState> states = new TreeMap<>();
        solutions.forEach((id, solution) -> states.put(
                id, new DividedState(solution, Attribution.of(solution, cancelled), Causes.of(switched, solution))));
        return states;
    }

    /** Mean current of a branch from {@code from} to {@code to}, A; 0 where nothing was solved. */
    double amps(Branch branch) {
        return solution.flow(branch.id()).map(BranchFlow::amps).orElse(0.0);
    }

    /** Its largest current, A. */
    double onAmps(Branch branch) {
        return solution.flow(branch.id()).map(BranchFlow::onAmps).orElse(0.0);
    }

    /**
     * The part of a conductor's mean current that others than sensors make, A: what loads, control units and sources send through
     * it. Sensors and the reference supplies that feed them make the rest.
     */
    double strayAmps(Harness harness, Branch conductor) {
        return attribution
                .ofAmps(conductor)
                .map(parts -> parts.stream()
                        .filter(part -> !isForSensors(harness, part.branch()))
                        .mapToDouble(Attribution.Part::value)
                        .sum())
                .orElse(0.0);
    }

    /**
     * The largest magnitude of that part, A, with all that switches at its worst: what sensors make is the same in every moment, so
     * each clock adds its largest departure from the mean.
     */
    double peakStrayAmps(Harness harness, Branch conductor) {
        double stray = strayAmps(harness, conductor);
        double above = 0;
        double below = 0;
        for (Clock clock : solution.duty().clocks()) {
            double most = 0;
            double least = 0;
            for (int stretch = 0; stretch < clock.stretches().size(); stretch++) {
                double amps = solution.duty().deviationAmps(conductor.id(), clock, stretch);
                most = Math.max(most, amps);
                least = Math.min(least, amps);
            }
            above += most;
            below += least;
        }
        return Math.max(Math.abs(stray + above), Math.abs(stray + below));
    }

    private static boolean isForSensors(Harness harness, Branch branch) {
        boolean regulated = branch.kind() == BranchKind.REGULATED_OUTPUT || branch.kind() == BranchKind.REGULATED_INPUT;
        return branch.kind() == BranchKind.SENSOR
                || regulated
                        && branch.element()
                                .filter(ComponentId.class::isInstance)
                                .flatMap(id -> harness.components().find((ComponentId) id))
                                .filter(component -> component.device() instanceof ControlUnit)
                                .isPresent();
    }

    /** A current in or against the direction of its branch. */
    record Directed(Branch branch, boolean forward) {}

    /** Whose currents make the sum of some currents, largest first. What is no plain resistance makes its current itself. */
    List<CurrentShare> shares(List<Directed> currents) {
        Map<ElementId, Double> sums =
                new TreeMap<>((one, other) -> NaturalOrder.INSTANCE.compare(one.value(), other.value()));
        for (Directed current : currents) {
            double sign = current.forward() ? 1 : -1;
            Optional<List<Attribution.Part>> parts = attribution.ofAmps(current.branch());
            if (parts.isPresent()) {
                parts.get().forEach(part -> add(sums, part.branch(), sign * part.value()));
            } else {
                add(sums, current.branch(), sign * amps(current.branch()));
            }
        }
        List<CurrentShare> shares = new ArrayList<>();
        sums.forEach((cause, amps) -> shares.add(new CurrentShare(cause, amps)));
        shares.removeIf(share -> share.amps() == 0);
        shares.sort((one, other) -> Double.compare(Math.abs(other.amps()), Math.abs(one.amps())));
        return shares;
    }

    private void add(Map<ElementId, Double> sums, Branch branch, double amps) {
        causes.of(branch).forEach(cause -> sums.merge(cause.element(), cause.shareFraction() * amps, Double::sum));
    }
}
