package org.ohmloom.analysis.tolerance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.graph.BranchId;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Load;
import org.ohmloom.model.StateId;
import org.ohmloom.size.protection.DeviceProtection;
import org.ohmloom.solve.LoadVolts;

/** Chooses what is followed: each result in the state that is hardest on it as the harness is drawn, or in one asked for. */
final class Watches {

    /** A current that is none, A. */
    private static final double LEAST_AMPS = 1e-6;

    private final Analysis analysis;
    private final SortedSet<StateId> states;
    private final SortedSet<StateId> lasting;
    private final List<Watch> found = new ArrayList<>();

    private Watches(Analysis analysis, Optional<StateId> only) {
        this.analysis = analysis;
        this.states = new TreeSet<>(
                only.map(Set::of).orElse(analysis.harness().states().ids()));
        this.lasting = new TreeSet<>(only.map(Set::of).orElse(Set.copyOf(ContinuousStates.of(analysis.harness()))));
    }

    /** What is followed, loads first; with a load asked for, that load and what lies on its way. */
    static List<Watch> of(Analysis analysis, Optional<StateId> only, Optional<ComponentId> load) {
        Watches watches = new Watches(analysis, only);
        watches.loads();
        Set<String> way = load.map(watches::way).orElse(Set.of());
        watches.wires();
        watches.devices();
        return load.isEmpty()
                ? watches.found
                : watches.found.stream()
                        .filter(each -> each.subject().equals(load.get())
                                || way.contains(each.subject().value()))
                        .toList();
    }

    private void loads() {
        for (Component component : analysis.harness().components().all()) {
            if (component.device() instanceof Load load) {
                ComponentId id = component.id();
                worst(states, state -> load(state, id).map(each -> each.onDropVolts() / each.limitVolts()))
                        .ifPresent(state -> add(
                                Measure.LOAD_DROP,
                                id,
                                state,
                                OptionalDouble.of(load(state, id).orElseThrow().limitVolts())));
                worst(states, state -> load(state, id).map(each -> -each.onVolts()))
                        .ifPresent(state -> add(Measure.LOAD_VOLTS, id, state, load.minimumVolts()));
            }
        }
    }

    /** What a load takes part in; only while it takes current. */
    private Optional<LoadVolts> load(StateId state, ComponentId id) {
        return analysis.solution(state)
                .map(solution -> solution.loads().get(id))
                .filter(each -> Math.abs(each.on().amps()) > LEAST_AMPS);
    }

    private Set<String> way(ComponentId load) {
        return states.stream()
                .flatMap(state -> load(state, load).stream())
                .flatMap(each -> Stream.concat(each.feedPath().stream(), each.returnPath().stream()))
                .map(BranchId::value)
                .collect(Collectors.toSet());
    }

    private void wires() {
        for (WireRating rating : analysis.ratings().values()) {
            BranchId branch = new BranchId(rating.wire().id().value());
            worst(lasting, state -> amps(state, branch))
                    .ifPresent(state -> add(
                            Measure.WIRE_AMPS,
                            rating.wire().id(),
                            state,
                            rating.ampacity()
                                    .map(each -> OptionalDouble.of(each.limitAmps()))
                                    .orElse(OptionalDouble.empty())));
            worst(lasting, state -> amps(state, branch).map(amps -> analysis.wireCelsius(
                                    state, rating.wire().id())
                            .orElseThrow()))
                    .ifPresent(state -> add(
                            Measure.WIRE_CELSIUS,
                            rating.wire().id(),
                            state,
                            rating.ampacity()
                                    .map(each -> OptionalDouble.of(each.limitCelsius()))
                                    .orElse(OptionalDouble.empty())));
        }
    }

    private Optional<Double> amps(StateId state, BranchId branch) {
        return analysis.solution(state)
                .flatMap(solution -> solution.flow(branch))
                .map(flow -> Math.abs(flow.rmsAmps()))
                .filter(amps -> amps > LEAST_AMPS);
    }

    private void devices() {
        for (DeviceProtection device :
                analysis.evidence().protection().devices().values()) {
            worst(lasting, state -> amps(state, new BranchId(device.device().value())))
                    .ifPresent(state -> add(
                            Measure.DEVICE_AMPS,
                            device.device(),
                            state,
                            OptionalDouble.of(device.rating().continuousAmps())));
        }
    }

    private void add(Measure measure, ElementId subject, StateId state, OptionalDouble limit) {
        found.add(new Watch(measure, subject, state, limit));
    }

    private static Optional<StateId> worst(SortedSet<StateId> among, Function<StateId, Optional<Double>> badness) {
        return among.stream()
                .filter(state -> badness.apply(state).isPresent())
                .max(Comparator.comparingDouble(
                        (StateId state) -> badness.apply(state).orElseThrow()));
    }
}
