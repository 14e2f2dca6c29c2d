package org.ohmloom.solve.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.SolveTexts;
import org.ohmloom.solve.WarmNetwork;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * The starts in one operating state.
 *
 * <p>First the state before: what starts is off, the rest runs, motors at the speed their voltage gives them. Then the first
 * instant, which tells whether the run can matter: where it moves no supply by more than {@link #NOTICED_SHARE} and takes
 * no protective device above its rating, the run is left out. The others are followed by {@link Stepper}.
 */
final class StateRuns {

    /** Change of a supply, as a share of it, that is worth a run. */
    static final double NOTICED_SHARE = 0.005;

    /** Rounds in which running motors find their speed before a start, and the change that counts as none. */
    private static final int MOST_ROUNDS = 20;

    private static final double SAME_SPEED = 1e-7;
    private static final double LEAST_SIZE = 0.1;
    private static final double LEAST_VOLTS_SHARE = 0.01;

    private final OperatingState state;
    private final List<Starter> starters;
    private final Probes probes;
    private final WarmNetwork network;
    private final List<SensedSource> sensed;
    private final OutputLimits limits;
    private final double[] speeds;
    private final long mostSolutions;

    /**
     * Prepares the starts of a state.
     *
     * @param harness       the harness
     * @param state         the state
     * @param solution      its solution
     * @param found         what can start in it
     * @param mostSolutions how often the network may be solved before what is left is skipped
     * @param cancelled     asks to stop
     */
    StateRuns(
            Harness harness,
            OperatingState state,
            Solution solution,
            Starters found,
            long mostSolutions,
            BooleanSupplier cancelled) {
        this.state = state;
        this.starters = found.found();
        this.limits = new OutputLimits(harness, found.network());
        this.probes = Probes.of(harness, solution, limits.outputs());
        this.network = new WarmNetwork(found.network(), cancelled);
        this.sensed = SensedSource.of(solution.network());
        this.mostSolutions = mostSolutions;
        speeds = new double[starters.size()];
        Arrays.fill(speeds, 1);
    }

    /** Follows all starts: of all loads together first, while the control units are on already, then of each alone, the largest first while the budget lasts. */
    void all(List<StartUp> runs, List<SkippedStart> skipped) {
        List<Starter> loads = starters.stream()
                .filter(starter -> starter.moving().manner() != Manner.CHARGES)
                .toList();
        Optional<StartUp> together = loads.size() < 2 ? Optional.empty() : start(loads, skipped);
        List<Starter> bySize = new ArrayList<>(starters);
        bySize.sort(Comparator.comparingDouble((Starter starter) -> -firstAmps(starter, together)));
        List<StartUp> singles = new ArrayList<>();
        List<ComponentId> left = new ArrayList<>();
        for (Starter starter : bySize) {
            if (network.solutions() < mostSolutions) {
                start(List.of(starter), skipped).ifPresent(singles::add);
            } else {
                left.add(starter.id());
            }
        }
        if (!left.isEmpty()) {
            skipped.add(new SkippedStart(state.id(), left, SolveTexts.text("start.left-smallest", starters.size())));
        }
        singles.sort(Comparator.comparing(run -> run.starters().get(0).id()));
        runs.addAll(singles);
        together.ifPresent(runs::add);
    }

    private static double firstAmps(Starter starter, Optional<StartUp> together) {
        return together.stream()
                .flatMap(run -> run.starters().stream())
                .filter(trace -> trace.id().equals(starter.id()))
                .mapToDouble(StarterTrace::peakAmps)
                .findFirst()
                .orElse(0);
    }

    private Optional<StartUp> start(List<Starter> starting, List<SkippedStart> skipped) {
        long solvedBefore = network.solutions();
        List<Starter> answering = starters.stream()
                .filter(starter -> starter.follows() && !starting.contains(starter))
                .toList();
        StartReport report = new StartReport(state, starting, probes);
        Supplier<double[]> reading = () -> probes.read(network, starting);
        if (before(starting, answering).isPresent()) {
            skipped.add(new SkippedStart(state.id(), report.ids(), SolveTexts.text("start.left-no-state")));
            return Optional.empty();
        }
        double[] before = reading.get();
        List<Moving> moving = new ArrayList<>();
        double[] at = new double[starting.size() + answering.size()];
        starting.forEach(starter -> moving.add(starter.moving()));
        for (Starter starter : answering) {
            at[moving.size()] = speeds[starters.indexOf(starter)];
            moving.add(starter.moving());
        }
        for (int each = 0; each < at.length; each++) {
            moving.get(each).apply(network, 0, at[each]);
        }
        Optional<Text> failure = limits.solve(network);
        if (failure.isPresent()) {
            return Optional.of(report.collapsed(failure.get(), network.solutions() - solvedBefore));
        }
        double[] first = reading.get();
        if (!matters(starting.size(), before, first)) {
            skipped.add(new SkippedStart(state.id(), report.ids(), reason(starting.size(), before, first)));
            return Optional.empty();
        }
        double[] constants = new double[starting.size()];
        for (int each = 0; each < constants.length; each++) {
            constants[each] = constantSeconds(starting.get(each), before[2 * each + 1], first[2 * each + 1]);
        }
        Stepper.End end = new Stepper(network, limits, moving, constants, reading, sizes(before, first)).run(at, first);
        return Optional.of(report.of(end, constants, before, sizes(before, first), network.solutions() - solvedBefore));
    }

    /** What starts is off, the rest runs as the state has it; why there is no solution, if there is none. */
    private Optional<Text> before(List<Starter> starting, List<Starter> answering) {
        for (Starter starter : starters) {
            if (starting.contains(starter)) {
                starter.moving().switchOff(network);
            } else {
                starter.run(network);
            }
        }
        double change = 1;
        for (int round = 0; round < MOST_ROUNDS && change > SAME_SPEED; round++) {
            for (Starter starter : answering) {
                starter.moving().apply(network, 0, speeds[starters.indexOf(starter)]);
            }
            Optional<Text> failure = limits.solve(network);
            if (failure.isPresent()) {
                return failure;
            }
            change = 0;
            for (Starter starter : answering) {
                double speed = ((RunningUp) starter.moving()).steadySpeed(starter.volts(network));
                int number = starters.indexOf(starter);
                change = Math.max(change, Math.abs(speed - speeds[number]));
                speeds[number] = speed;
            }
            for (SensedSource source : sensed) {
                change = Math.max(change, source.regulate(network) > SensedSource.SAME_VOLTS ? 1 : 0);
            }
        }
        return Optional.empty();
    }

    /** The time constant with the resistance of the feed in series: that of the thing alone over its share of the voltage. */
    private static double constantSeconds(Starter starter, double beforeVolts, double firstVolts) {
        double own = starter.moving().timeConstantSeconds();
        return starter.moving().hasState() && beforeVolts > 0
                ? own / Math.max(LEAST_VOLTS_SHARE, Math.min(1, firstVolts / beforeVolts))
                : own;
    }

    /** Size of each value, by which errors are judged. */
    private static double[] sizes(double[] before, double[] first) {
        double[] sizes = new double[first.length];
        for (int each = 0; each < sizes.length; each++) {
            sizes[each] = Math.max(LEAST_SIZE, Math.max(Math.abs(before[each]), Math.abs(first[each])));
        }
        return sizes;
    }

    private boolean matters(int count, double[] before, double[] first) {
        for (int each = 0; each < probes.supplies().size(); each++) {
            int value = Probes.firstSupply(count) + each;
            double noticed = NOTICED_SHARE * before[value];
            double minimum = probes.supplies().get(each).minimumVolts().orElse(0);
            if (before[value] - first[value] > noticed
                    || before[value] >= minimum && first[value] - noticed < minimum) {
                return true;
            }
        }
        for (int each = 0; each < probes.devices().size(); each++) {
            int value = probes.firstDevice(count) + each;
            if (first[value] > probes.devices().get(each).ratingAmps() && first[value] > before[value]) {
                return true;
            }
        }
        for (int each = 0; each < probes.outputs().size(); each++) {
            double limit = probes.outputs().get(each).limit().limitAmps();
            if (first[probes.firstOutput(count) + each] >= limit * Probes.AT_LIMIT_SHARE) {
                return true;
            }
        }
        for (int each = 0; each < probes.coils().size(); each++) {
            if (first[probes.firstCoil(count) + each] < probes.coils().get(each).dropOutVolts()) {
                return true;
            }
        }
        return false;
    }

    private Text reason(int count, double[] before, double[] first) {
        double sag = 0;
        for (int value = Probes.firstSupply(count); value < probes.firstDevice(count); value++) {
            sag = Math.max(sag, before[value] - first[value]);
        }
        double amps = 0;
        for (int each = 0; each < count; each++) {
            amps += first[2 * each];
        }
        return SolveTexts.text("start.left-harmless", Formats.amps(amps), Formats.volts(sag));
    }
}
