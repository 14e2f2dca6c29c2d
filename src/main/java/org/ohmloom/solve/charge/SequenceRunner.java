package org.ohmloom.solve.charge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.SourceConditions;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.SourceSetting;
import org.ohmloom.model.StateId;
import org.ohmloom.model.StateSequence;
import org.ohmloom.solve.SteadySources;
import org.ohmloom.solve.SteadySources.Means;
import org.ohmloom.solve.charge.SequenceRun.StepRun;
import org.ohmloom.tables.BatteryType;

/**
 * Runs a timed sequence of operating states, each instant as if it lasted: the charge level moves the batteries' voltage and
 * resistance, the time since the state began is the length of the pulse.
 *
 * <p>From one instant to the next the charge is counted by the mean of the currents at both ends, with the charge level at
 * the far end first guessed from the current at the near one (Heun). An instant follows when a battery has moved by
 * {@link #STRETCH_SHARE} of its capacity, and sooner at the beginning of a state, where its resistance still rises. Charge
 * is counted in plain ampere hours: Peukert's law is for a steady discharge only. A battery begins with the charge level of
 * the first state that names one, full otherwise, and then keeps its own.
 */
final class SequenceRunner {

    /** Share of its capacity a battery moves by between two instants. */
    static final double STRETCH_SHARE = 0.025;

    private static final double FIRST_STRETCH_SECONDS = 5;
    private static final double GROWTH_RATIO = 3;
    private static final double SHORTEST_PULSE_SECONDS = 1;
    private static final int MOST_INSTANTS = 400;

    private final Harness harness;
    private final SourceConditions conditions;
    private final StateSequence sequence;
    private final StateSolver solver;
    private final List<BatteryTrace> batteries = new ArrayList<>();
    private final List<StepRun> steps = new ArrayList<>();
    private Optional<StateId> stoppedAt = Optional.empty();
    private double seconds;
    private int instants;

    private SequenceRunner(Harness harness, SourceConditions conditions, StateSequence sequence, StateSolver solver) {
        this.harness = harness;
        this.conditions = conditions;
        this.sequence = sequence;
        this.solver = solver;
        for (Component component : harness.components().all()) {
            if (component.device() instanceof Battery battery) {
                double efficiency = conditions
                        .type(battery)
                        .map(BatteryType::chargeEfficiency)
                        .map(each -> each.value())
                        .orElse(1.0);
                batteries.add(new BatteryTrace(
                        component.id(),
                        battery,
                        start(harness, sequence, component, battery),
                        efficiency,
                        sequence.untilVolts()));
            }
        }
    }

    static SequenceRun run(Harness harness, SourceConditions conditions, StateSequence sequence, StateSolver solver) {
        SequenceRunner runner = new SequenceRunner(harness, conditions, sequence, solver);
        for (StateSequence.Step step : sequence.steps()) {
            if (!runner.step(step)) {
                runner.stoppedAt = Optional.of(step.state());
                break;
            }
        }
        return runner.finish();
    }

    private static double start(Harness harness, StateSequence sequence, Component component, Battery battery) {
        return sequence.steps().stream()
                .map(step -> harness.states().get(step.state()).sourceSetting(component.id(), battery))
                .flatMapToDouble(setting -> setting.chargeFraction().stream())
                .findFirst()
                .orElse(1);
    }

    /** Runs one step; false when its network has no solution. */
    private boolean step(StateSequence.Step step) {
        OperatingState state = harness.states().get(step.state());
        double began = seconds;
        double net = net();
        double into = 0;
        SteadySources sources = solver.solve(at(state, SHORTEST_PULSE_SECONDS, 0));
        Optional<Means> means = means(sources, state, SHORTEST_PULSE_SECONDS, 0);
        if (means.isEmpty()) {
            return false;
        }
        sample(state, means.get(), true);
        while (into < step.durationSeconds()) {
            double stretch = Math.min(stretch(into), step.durationSeconds() - into);
            means = means(sources, state, Math.max(SHORTEST_PULSE_SECONDS, into + stretch), stretch);
            if (means.isEmpty()) {
                return false;
            }
            into += stretch;
            seconds = began + into;
            count(stretch, means.get());
            sample(state, means.get(), false);
        }
        steps.add(new StepRun(
                state.id(), began, step.durationSeconds(), net() - net, alternatorAmps(means.get()), lowestVolts()));
        return true;
    }

    private Optional<Means> means(
            SteadySources sources, OperatingState state, double pulseSeconds, double stretchSeconds) {
        OperatingState then = at(state, pulseSeconds, stretchSeconds);
        Map<BranchId, Law.VoltageSource> laws = new TreeMap<>();
        for (BatteryTrace trace : batteries) {
            Component component = harness.components().get(trace.id());
            laws.put(
                    branch(trace.id()),
                    conditions
                            .battery(component, (Battery) component.device(), then)
                            .law());
        }
        instants++;
        return sources.means(laws);
    }

    private double stretch(double into) {
        double early = into == 0 ? FIRST_STRETCH_SECONDS : into * (GROWTH_RATIO - 1);
        double moving = batteries.stream()
                .mapToDouble(battery -> battery.secondsFor(STRETCH_SHARE))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        double fewer = instants < MOST_INSTANTS ? 0 : sequence.totalSeconds() / MOST_INSTANTS;
        return Math.max(Math.min(early, moving), fewer);
    }

    /** The state with the batteries' charge levels after a stretch, drawn on for so long. */
    private OperatingState at(OperatingState state, double pulseSeconds, double stretchSeconds) {
        OperatingState changed = state.withDurationSeconds(pulseSeconds);
        for (BatteryTrace battery : batteries) {
            SourceSetting setting = state.sourceSetting(
                    battery.id(), harness.components().get(battery.id()).device());
            changed =
                    changed.withSource(battery.id(), setting.withChargeFraction(battery.guessFraction(stretchSeconds)));
        }
        return changed;
    }

    private void count(double stretch, Means means) {
        for (BatteryTrace battery : batteries) {
            double far = means.amps().getOrDefault(branch(battery.id()), 0.0);
            battery.count(seconds, stretch, (battery.amps() + far) / 2);
        }
    }

    private void sample(OperatingState state, Means means, boolean stepBegins) {
        for (BatteryTrace battery : batteries) {
            BranchId branch = branch(battery.id());
            if (means.amps().containsKey(branch)) {
                battery.sample(
                        seconds,
                        state,
                        means.amps().get(branch),
                        means.terminalVolts().get(branch),
                        stepBegins);
            } else {
                battery.rest();
            }
        }
    }

    private static BranchId branch(ComponentId source) {
        return new BranchId(source.value());
    }

    private double net() {
        return batteries.stream().mapToDouble(BatteryTrace::netAmpHours).sum();
    }

    private double lowestVolts() {
        return batteries.stream().mapToDouble(BatteryTrace::volts).min().orElse(0);
    }

    /** Current of the alternators, A. */
    private double alternatorAmps(Means means) {
        return harness.components().all().stream()
                .filter(component -> component.device() instanceof Alternator)
                .mapToDouble(component -> means.amps().getOrDefault(branch(component.id()), 0.0))
                .sum();
    }

    private SequenceRun finish() {
        List<BatteryRun> runs = batteries.stream().map(BatteryTrace::finish).toList();
        OptionalDouble until = sequence.untilVolts();
        return new SequenceRun(
                sequence.id(),
                sequence.name(),
                steps,
                runs,
                until,
                sequence.totalSeconds(),
                stoppedAt,
                SequenceSentences.of(harness, runs, until, sequence.totalSeconds(), stoppedAt));
    }
}
