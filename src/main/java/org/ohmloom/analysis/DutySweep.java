package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.SwitchedLoads;
import org.ohmloom.graph.SwitchedLoads.SwitchedLoad;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.SequenceId;
import org.ohmloom.model.Setting;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Evidence;
import org.ohmloom.size.ConductorChooser;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.size.Settling;
import org.ohmloom.size.SizingInput;
import org.ohmloom.size.UpstreamDevices;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.SourceMemory;

/**
 * Every load that some lasting state runs at a duty, run at {@link #DUTIES}: what its wires then carry, how warm they get
 * and what their size must be for.
 *
 * <p>All else stays as in the lasting state that runs the load at its largest duty. Each step is solved and heated like any
 * operating state; the size each wire asks for is found for that step alone.
 */
public final class DutySweep {

    /** The duties of the sweep. */
    public static final List<Double> DUTIES = List.of(0.25, 0.5, 0.75, 1.0);

    /** Steps times branches of the network for a whole harness; at least one load is swept. */
    private static final long MOST_BRANCH_STEPS = 60_000;

    private final Analysis analysis;
    private final Cancel cancel;

    private DutySweep(Analysis analysis, Cancel cancel) {
        this.analysis = analysis;
        this.cancel = cancel;
    }

    /** What stays the same in all steps: the harness without states, every wire at the size it was analysed with. */
    private record Common(Bench bench, ProvisionalSizes sizes, UpstreamDevices devices) {
        static Common of(Analysis analysis, Cancel cancel) {
            Evidence evidence = analysis.evidence();
            Bench bench = Bench.of(stateless(analysis), evidence.tables(), cancel);
            return new Common(
                    bench,
                    ProvisionalSizes.minimum(bench.harness(), evidence.tables(), bench.basis()),
                    UpstreamDevices.of(bench.harness(), evidence.upstream()));
        }
    }

    /** What decides the duty of a load. */
    private sealed interface Dial {

        Optional<Setting> in(OperatingState state);

        OperatingState set(OperatingState state, double dutyFraction);

        String words();

        record OfComponent(ComponentId component) implements Dial {
            @Override
            public Optional<Setting> in(OperatingState state) {
                return state.setting(component);
            }

            @Override
            public OperatingState set(OperatingState state, double dutyFraction) {
                return state.with(component, Setting.duty(dutyFraction));
            }

            @Override
            public String words() {
                return component.value();
            }
        }

        record OfPin(OutputPin pin) implements Dial {
            @Override
            public Optional<Setting> in(OperatingState state) {
                return state.setting(pin);
            }

            @Override
            public OperatingState set(OperatingState state, double dutyFraction) {
                return state.with(pin, Setting.duty(dutyFraction));
            }

            @Override
            public String words() {
                return pin.toString();
            }
        }
    }

    private record Driven(ComponentId load, Dial dial, List<WireId> wires) {}

    /**
     * Runs the sweep.
     *
     * @param analysis the analysed harness
     * @param cancel   asks to stop
     * @return steps by load, then by duty; empty when no state runs anything at a duty
     */
    public static List<DutyStep> of(Analysis analysis, Cancel cancel) {
        return new DutySweep(analysis, cancel).run();
    }

    /**
     * Loads run at a duty that are left out to keep the calculation quick: in a large harness the sweep takes the first ones.
     *
     * @param analysis the analysed harness
     */
    public static List<ComponentId> leftOut(Analysis analysis) {
        DutySweep sweep = new DutySweep(analysis, Cancel.NEVER);
        List<Driven> driven = sweep.driven();
        return driven.stream().skip(sweep.most(driven)).map(Driven::load).toList();
    }

    private List<DutyStep> run() {
        List<Driven> driven = driven();
        if (driven.isEmpty()) {
            return List.of();
        }
        Common common = Common.of(analysis, cancel);
        return driven.subList(0, most(driven)).parallelStream()
                .flatMap(each -> steps(each, common))
                .toList();
    }

    private int most(List<Driven> driven) {
        return most(driven.size(), analysis.evidence().drawn().branches().size());
    }

    /** How many of so many loads are swept in a network of so many branches. */
    static int most(int loads, int branches) {
        long work = (long) DUTIES.size() * Math.max(1, branches);
        return (int) Math.min(loads, Math.max(1, MOST_BRANCH_STEPS / work));
    }

    /** The steps of one load, each begun where the one before ended. */
    private Stream<DutyStep> steps(Driven driven, Common common) {
        List<DutyStep> steps = new ArrayList<>();
        SourceMemory memory = new SourceMemory();
        base(driven.dial())
                .ifPresent(state -> DUTIES.forEach(
                        duty -> step(driven, common, state, duty, memory).ifPresent(steps::add)));
        return steps.stream();
    }

    private List<Driven> driven() {
        List<Driven> driven = new ArrayList<>();
        for (SwitchedLoad each : SwitchedLoads.of(analysis.evidence().drawn())) {
            List<WireId> wires = Stream.concat(each.feedWires().stream(), each.returnWires().stream())
                    .toList();
            driven.add(new Driven(each.load(), dial(each.output()), wires));
        }
        analysis.harness().components().all().stream()
                .filter(component -> component.device() instanceof Load load && load.control() == Load.Control.COMMAND)
                .forEach(component -> driven.add(
                        new Driven(component.id(), new Dial.OfComponent(component.id()), feed(component.id()))));
        driven.removeIf(each -> base(each.dial()).isEmpty());
        driven.sort(Comparator.comparing(Driven::load));
        return driven;
    }

    private Dial dial(BranchId output) {
        Branch branch = analysis.evidence().drawn().branches().get(output);
        ComponentId component = (ComponentId) branch.element().orElseThrow();
        String pin = output.value().startsWith(component.value() + ".")
                ? output.value().substring(component.value().length() + 1)
                : "";
        return pin.isEmpty() ? new Dial.OfComponent(component) : new Dial.OfPin(new OutputPin(component, pin));
    }

    /** The wires of a load that draws from a standing feed. */
    private List<WireId> feed(ComponentId load) {
        return SwitchedLoads.feed(analysis.evidence().drawn(), load);
    }

    /** The lasting state that runs it at its largest duty below 1. */
    private Optional<OperatingState> base(Dial dial) {
        SortedSet<StateId> lasting = ContinuousStates.of(analysis.harness());
        return analysis.states().stream()
                .filter(state -> lasting.contains(state.id()))
                .filter(state -> dial.in(state)
                        .filter(set -> set.on() && set.dutyFraction() < 1)
                        .isPresent())
                .max(Comparator.comparingDouble(
                        state -> dial.in(state).orElseThrow().dutyFraction()));
    }

    private Optional<DutyStep> step(
            Driven driven, Common common, OperatingState state, double duty, SourceMemory memory) {
        cancel.check();
        OperatingState changed = driven.dial().set(state, duty).with(driven.load(), loadSetting(driven, state, duty));
        Harness harness = common.bench().harness().with(changed);
        Bench bench = common.bench().inStatesOrJointsOf(harness);
        ProvisionalSizes sizes = common.sizes();
        HeatedSolutions heated = HeatedSolutions.solve(
                bench,
                sizes,
                new TreeMap<>(
                        Map.of(state.id(), analysis.evidence().wireCelsius().get(state.id()))),
                new TreeMap<>(Map.of(state.id(), memory)));
        Solution solution = heated.solutions().get(state.id());
        Optional<LoadVolts> load = Optional.ofNullable(solution.loads().get(driven.load()));
        ConductorChooser chooser = new ConductorChooser(new SizingInput(
                harness,
                analysis.evidence().tables(),
                bench.basis(),
                bench.routes(),
                heated.solutions(),
                common.devices(),
                Optional.of(new Settling(bench.bundleHeat(), sizes::gauge))));
        return load.map(each -> new DutyStep(
                driven.load(),
                driven.dial().words(),
                state.id(),
                duty,
                each.on().amps(),
                each.amps(),
                each.onDropVolts(),
                each.limitVolts(),
                driven.wires().stream()
                        .flatMap(wire -> onWire(wire, heated, state.id(), chooser).stream())
                        .toList()));
    }

    private static Setting loadSetting(Driven driven, OperatingState state, double duty) {
        return driven.dial() instanceof Dial.OfComponent own && own.component().equals(driven.load())
                ? Setting.duty(duty)
                : state.setting(driven.load()).filter(Setting::on).orElse(Setting.ON);
    }

    private Optional<DutyStep.OnWire> onWire(
            WireId id, HeatedSolutions heated, StateId state, ConductorChooser chooser) {
        Optional<BranchFlow> flow = heated.solutions().get(state).flow(new BranchId(id.value()));
        return flow.map(each -> new DutyStep.OnWire(
                id,
                analysis.ratings().get(id).gauge(),
                Math.abs(each.onAmps()),
                each.rmsAmps(),
                Math.abs(each.amps()),
                Math.abs(each.onDropVolts()),
                heated.wireCelsius().get(state).get(id),
                Optional.of(chooser.choose(analysis.harness().wires().get(id)))));
    }

    private static Harness stateless(Analysis analysis) {
        Harness harness = analysis.harness();
        List<ElementId> gone = new ArrayList<>();
        harness.sequences().ids().forEach((SequenceId id) -> gone.add(id));
        harness.states().ids().forEach((StateId id) -> gone.add(id));
        List<Element> sized = new ArrayList<>();
        analysis.ratings()
                .values()
                .forEach(rating -> sized.add(
                        rating.provisional() ? rating.wire().withGauge(Optional.of(rating.gauge())) : rating.wire()));
        return harness.withoutAll(gone).withAll(sized);
    }
}
