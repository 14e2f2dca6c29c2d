package org.ohmloom.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.ReturnLoop;
import org.ohmloom.ground.LoopReading.Enclosed;
import org.ohmloom.ground.LoopReading.FieldPickUp;
import org.ohmloom.ground.LoopReading.Stray;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.model.StateId;
import org.ohmloom.model.StrapId;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;

/** Reads off every loop what flows in it, in every state, and what a field would drive in it. */
final class LoopReadings {

    /** A current below this is rounding, A. */
    private static final double ROUNDING_AMPS = 1e-9;

    private final LoopInput input;
    private final ReturnRules rules;
    private final SortedMap<StateId, DividedState> states;
    private final LoopMembers members;
    private final LoopArea areas;

    private LoopReadings(LoopInput input, SortedMap<StateId, DividedState> states) {
        this.input = input;
        this.states = states;
        rules = input.harness().rules().returnRules();
        members = new LoopMembers(input.harness());
        areas = new LoopArea(input, members, rules.heightMetres());
    }

    /** The readings of all loops, in their order. */
    static List<LoopReading> of(LoopInput input, SortedMap<StateId, DividedState> states, BooleanSupplier cancelled) {
        LoopReadings readings = new LoopReadings(input, states);
        List<LoopReading> all = new ArrayList<>();
        for (ReturnLoop loop : input.found().loops()) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException("loops cancelled");
            }
            all.add(readings.read(loop));
        }
        return all;
    }

    private LoopReading read(ReturnLoop loop) {
        List<Branch> branches = loop.members().stream()
                .map(id -> input.drawn().branch(id).orElseThrow())
                .toList();
        double ohms = ohms(branches);
        Optional<Enclosed> enclosed = areas.of(loop, branches);
        SortedMap<StateId, List<Double>> amps = new TreeMap<>();
        states.forEach((id, state) -> amps.put(id, along(loop, branches, state)));
        return new LoopReading(
                loop,
                ohms,
                amps,
                intended(branches),
                stray(members.signals(branches)),
                enclosed,
                enclosed.flatMap(each -> field(each, ohms)));
    }

    /** Current of each member in the direction the loop is told in, A. */
    private static List<Double> along(ReturnLoop loop, List<Branch> branches, DividedState state) {
        List<Double> amps = new ArrayList<>();
        for (int k = 0; k < branches.size(); k++) {
            double each = state.amps(branches.get(k));
            boolean forward = branches.get(k).from().equals(loop.points().get(k));
            amps.add(forward || each == 0 ? each : -each);
        }
        return List.copyOf(amps);
    }

    private double ohms(List<Branch> branches) {
        return states.values().stream()
                .map(DividedState::solution)
                .mapToDouble(solution -> branches.stream()
                        .mapToDouble(branch -> ohms(branch, solution))
                        .sum())
                .max()
                .orElse(0);
    }

    private static double ohms(Branch branch, Solution solution) {
        return solution.flow(branch.id())
                .map(BranchFlow::ohms)
                .flatMap(ohms -> ohms.isPresent() ? Optional.of(ohms.getAsDouble()) : Optional.empty())
                .orElseGet(() -> solution.network()
                        .branch(branch.id())
                        .map(each -> ohms(each.law()))
                        .orElse(0.0));
    }

    private static double ohms(Law law) {
        return law instanceof Law.Resistance resistance ? resistance.ohms() : 0;
    }

    private Optional<String> intended(List<Branch> branches) {
        Set<ElementId> named = branches.stream()
                .flatMap(branch -> branch.element().stream())
                .filter(id -> id instanceof WireId || id instanceof StrapId)
                .collect(Collectors.toSet());
        return rules.intended().stream()
                .filter(each -> !named.isEmpty()
                        && named.stream()
                                .allMatch(id -> each.wires().contains(id)
                                        || each.straps().contains(id)))
                .map(ReturnRules.IntendedParallel::reason)
                .findFirst();
    }

    private Optional<Stray> stray(List<Branch> signals) {
        Stray largest = null;
        for (Branch member : signals) {
            for (StateId id : states.keySet()) {
                DividedState state = states.get(id);
                double stray = state.strayAmps(input.harness(), member);
                double most = state.peakStrayAmps(input.harness(), member);
                if (most > ROUNDING_AMPS && (largest == null || most > largest.onAmps())) {
                    largest = new Stray(member.id(), id, Math.abs(stray), most);
                }
            }
        }
        return Optional.ofNullable(largest);
    }

    private Optional<FieldPickUp> field(Enclosed enclosed, double ohms) {
        if (rules.fieldTesla().isEmpty() || rules.fieldHertz().isEmpty()) {
            return Optional.empty();
        }
        double tesla = rules.fieldTesla().getAsDouble();
        double hertz = rules.fieldHertz().getAsDouble();
        double volts = LoopInduction.volts(hertz, tesla, enclosed.squareMetres());
        double henries = enclosed.henries().orElse(0);
        double amps = ohms > 0 || henries > 0 ? LoopInduction.amps(volts, ohms, henries, hertz) : 0;
        return Optional.of(new FieldPickUp(tesla, hertz, volts, amps));
    }
}
