package org.ohmloom.solve.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;

/**
 * Everything that takes current in some operating state that lasts. What runs it is read off the state in which it takes
 * most; ties by the order of states.
 *
 * @param all      what takes current, in the order of branches
 * @param settings how its controls are set
 * @param never    loads that take current in no lasting state
 */
record Takers(List<Taker> all, Settings settings, SortedSet<ComponentId> never) {
    /** A smaller current is none, A. */
    static final double NOTHING_AMPS = 1e-9;

    Takers {
        all = List.copyOf(all);
    }

    /** A branch in the state in which it takes most. */
    private record Most(OperatingState state, Branch branch, BranchFlow flow) {}

    /**
     * Reads them off solved states.
     *
     * @param harness   the harness
     * @param lasting   states that last
     * @param solutions their solutions
     * @param cancelled asks to stop
     */
    static Takers of(
            Harness harness,
            List<OperatingState> lasting,
            Map<StateId, Solution> solutions,
            BooleanSupplier cancelled) {
        Settings settings = Settings.of(harness, lasting);
        SortedMap<BranchId, Most> most = new TreeMap<>();
        for (OperatingState state : lasting) {
            for (BranchFlow flow : solutions.get(state.id()).flows().values()) {
                boolean takes = flow.branch().kind().part() == BranchKind.Part.LOAD
                        && !NeedsSearch.isSignal(flow.branch())
                        && Math.abs(flow.onAmps()) > NOTHING_AMPS;
                if (takes) {
                    most.merge(
                            flow.branch().id(),
                            new Most(state, flow.branch(), flow),
                            (one, other) -> Math.abs(other.flow.onAmps()) > Math.abs(one.flow.onAmps()) ? other : one);
                }
            }
        }
        Map<StateId, NeedsSearch> searches = new TreeMap<>();
        List<Taker> all = new ArrayList<>();
        SortedSet<ComponentId> never = loads(harness);
        for (Most each : most.values()) {
            NeedsSearch search = searches.computeIfAbsent(
                    each.state.id(), state -> new NeedsSearch(solutions.get(state), cancelled));
            search.of(each.branch).ifPresent(needs -> {
                Taker taker = taker(harness, settings, each, needs);
                all.add(taker);
                taker.load().ifPresent(never::remove);
            });
        }
        return new Takers(all, settings, never);
    }

    private static SortedSet<ComponentId> loads(Harness harness) {
        SortedSet<ComponentId> loads = new TreeSet<>();
        for (Component component : harness.components().all()) {
            if (component.device() instanceof Load) {
                loads.add(component.id());
            }
        }
        return loads;
    }

    private static Taker taker(Harness harness, Settings settings, Most most, Needs plain) {
        Optional<ComponentId> component =
                most.branch.element().filter(ComponentId.class::isInstance).map(ComponentId.class::cast);
        Optional<Load> load = component
                .filter(id -> most.branch.kind() == BranchKind.LOAD)
                .flatMap(harness.components()::find)
                .map(Component::device)
                .filter(Load.class::isInstance)
                .map(Load.class::cast);
        Needs needs =
                load.filter(each -> each.control() == Load.Control.COMMAND).isPresent()
                        ? plain.with(Control.command(component.orElseThrow()))
                        : plain;
        double dutyFraction = 1;
        for (Control control : needs.controls()) {
            dutyFraction = Math.min(dutyFraction, settings.of(control).dutyFraction());
        }
        if (load.filter(Takers::thermostat).isPresent()) {
            dutyFraction = Math.min(
                    dutyFraction,
                    settings.of(Control.command(component.orElseThrow())).dutyFraction());
        }
        boolean pulsed = dutyFraction < 1;
        Optional<TakenCurrent> law = TakenCurrent.of(most.branch.law())
                .or(() -> load.flatMap(each -> TakenCurrent.of(each.draw())))
                .filter(each -> !pulsed || !coiled(load));
        boolean held = coiled(load)
                || load.filter(each -> each.diodeVolts().isPresent()).isPresent();
        return new Taker(
                most.branch,
                needs,
                law.orElseGet(() -> asSeen(harness, component, most)),
                law.isPresent() || most.branch.law() instanceof Law.CurrentOf,
                pulsed,
                held ? 1 : Math.sqrt(dutyFraction));
    }

    /** Whether an inductance keeps its current while its output is off. */
    private static boolean coiled(Optional<Load> load) {
        return load.filter(each -> each.draw() instanceof Draw.Inductive || each.draw() instanceof Draw.MagnetMotor)
                .isPresent();
    }

    private static boolean thermostat(Load load) {
        return load.control() == Load.Control.FEED && load.draw() instanceof Draw.Resistive;
    }

    /** What a state shows: the power of a converter's input, the current of anything else. */
    private static TakenCurrent asSeen(Harness harness, Optional<ComponentId> component, Most most) {
        boolean converter = component
                .flatMap(harness.components()::find)
                .filter(each -> each.device() instanceof Converter)
                .isPresent();
        return converter
                ? TakenCurrent.power(Math.max(1e-9, most.flow.onAmps() * most.flow.onDropVolts()))
                : TakenCurrent.constant(most.flow.onAmps());
    }
}
