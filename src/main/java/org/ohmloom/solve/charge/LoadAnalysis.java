package org.ohmloom.solve.charge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Cycle;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.Setting;
import org.ohmloom.solve.BranchFlow;

/**
 * Tabulates the loads of a state with their solved currents.
 *
 * <p>A load is intermittent when it runs for a while now and then ({@link Cycle#onSeconds()}), when it stands at its start
 * current, and when the state itself is over within {@link WorstMean#FIVE_MINUTES} or cranks the engine; every other load is
 * continuous with its mean current. A converter stands for what it feeds.
 */
final class LoadAnalysis {

    private static final double LEAST_AMPS = 1e-6;
    private static final double LEAST_VOLTS = 1e-3;
    private static final double LARGEST_B_SHARE = 0.1;

    private final Harness harness;
    private final OperatingState state;

    private LoadAnalysis(Harness harness, OperatingState state) {
        this.harness = harness;
        this.state = state;
    }

    /**
     * The tabulation of a state.
     *
     * @param harness   the harness
     * @param state     the state
     * @param flows     its solved currents
     * @param limitAmps most current its alternators give, A
     */
    static LoadTabulation of(Harness harness, OperatingState state, Collection<BranchFlow> flows, double limitAmps) {
        LoadAnalysis analysis = new LoadAnalysis(harness, state);
        List<LoadLine> lines = analysis.lines(flows);
        double columnA = sum(lines, line -> line.intermittent() ? 0 : line.amps());
        double columnB = sum(lines, line -> line.intermittent() ? line.onAmps() : 0);
        double largestB = lines.stream()
                .filter(LoadLine::intermittent)
                .mapToDouble(LoadLine::onAmps)
                .max()
                .orElse(0);
        return new LoadTabulation(
                state.id(),
                lines,
                columnA,
                sum(lines, LoadLine::fiveSecondAmps),
                sum(lines, LoadLine::fiveMinuteAmps),
                sum(lines, LoadLine::halfHourAmps),
                columnA,
                columnB,
                twoColumnAmps(columnA, columnB, largestB),
                limitAmps);
    }

    /** A + the greater of 10 % of B and the largest of B, A: ABYC E-11 from memory. */
    static double twoColumnAmps(double columnAAmps, double columnBAmps, double largestBAmps) {
        return columnAAmps + Math.max(LARGEST_B_SHARE * columnBAmps, largestBAmps);
    }

    private static double sum(List<LoadLine> lines, ToDoubleFunction<LoadLine> amps) {
        return lines.stream().mapToDouble(amps).sum();
    }

    private List<LoadLine> lines(Collection<BranchFlow> flows) {
        Map<ComponentId, double[]> sums = new LinkedHashMap<>();
        for (BranchFlow flow : flows) {
            if (flow.branch().kind().part() == BranchKind.Part.LOAD
                    && flow.branch().element().orElse(null) instanceof ComponentId id) {
                double[] sum = sums.computeIfAbsent(id, key -> new double[2]);
                sum[0] += suppliedAmps(flow);
                sum[1] += Math.abs(flow.onAmps());
            }
        }
        List<LoadLine> lines = new ArrayList<>();
        sums.forEach((id, sum) -> {
            if (sum[1] > LEAST_AMPS) {
                lines.add(line(harness.components().get(id), sum[0], sum[1]));
            }
        });
        lines.sort(Comparator.comparingDouble(LoadLine::onAmps).reversed().thenComparing(LoadLine::component));
        return lines;
    }

    /**
     * Mean current a load takes from its supply, A: its mean power over its voltage while on where that is less. The current of a load with a
     * freewheel path goes on without its supply while the output is off.
     */
    private static double suppliedAmps(BranchFlow flow) {
        double onVolts = Math.abs(flow.onDropVolts());
        double amps = Math.abs(flow.amps());
        return onVolts > LEAST_VOLTS ? Math.min(amps, Math.abs(flow.watts()) / onVolts) : amps;
    }

    private LoadLine line(Component component, double amps, double onAmps) {
        Optional<Cycle> cycle = component.device() instanceof Load load ? load.cycle() : Optional.empty();
        Optional<Setting> setting = state.setting(component.id());
        boolean starting = setting.filter(Setting::starting).isPresent();
        boolean shortState = state.mode() == EngineMode.CRANKING
                || state.durationSeconds().isPresent()
                        && state.durationSeconds().getAsDouble() < WorstMean.FIVE_MINUTES;
        boolean intermittent =
                shortState || starting || cycle.flatMap(LoadAnalysis::now).isPresent();
        double stateSeconds = state.durationSeconds().orElse(Double.POSITIVE_INFINITY);
        double on = cycle.map(each -> each.onSeconds()
                        .orElse(each.periodSeconds()
                                * setting.map(Setting::dutyFraction).orElse(1.0)))
                .orElse(stateSeconds);
        double period = cycle.map(Cycle::periodSeconds).orElse(Double.POSITIVE_INFINITY);
        double level = cycle.isPresent() ? onAmps : amps;
        return new LoadLine(
                component.id(),
                component.name(),
                intermittent,
                amps,
                onAmps,
                WorstMean.amps(level, on, period, WorstMean.FIVE_SECONDS),
                WorstMean.amps(level, on, period, WorstMean.FIVE_MINUTES),
                WorstMean.amps(level, on, period, WorstMean.HALF_HOUR));
    }

    private static Optional<Cycle> now(Cycle cycle) {
        return cycle.onSeconds().isPresent() ? Optional.of(cycle) : Optional.empty();
    }
}
