package org.ohmloom.analysis.tolerance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoublePredicate;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.Variation;
import org.ohmloom.analysis.VariedStates;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.SourceMemory;

/**
 * Draws harnesses from the spreads of their parts and solves each with its conductors at temperature: JCGM 101:2008, the
 * propagation of distributions by a Monte Carlo method, with {@link LatinSquare} draws and the {@link Shares} of each kind.
 *
 * <p>A run is one harness; it is solved once whole and once more for each kind alone. {@link #TOGETHER} runs follow each
 * other on one thread, each solution from what the one before left, so that results are the same to the last bit on any count
 * of threads.
 */
public final class ToleranceStudy {

    private static final int TOGETHER = 5;

    private final TolerancePlan plan;
    private final List<SpreadInput> inputs;
    private final List<SpreadKind> kinds;
    private final List<Watch> watches;
    private final VariedStates states;
    private final double[][] shares;

    private ToleranceStudy(Analysis analysis, TolerancePlan plan, Cancel cancel) {
        this.plan = plan;
        SpreadInputs.check(analysis, plan.spreads());
        watches = Watches.of(analysis, plan.state(), plan.load());
        inputs = SpreadInputs.of(analysis, plan.spreads());
        kinds = inputs.stream().map(SpreadInput::kind).distinct().sorted().toList();
        states = new VariedStates(analysis, watches.stream().map(Watch::state).collect(Collectors.toSet()), cancel);
        shares = inputs.stream()
                .map(input -> LatinSquare.shares(plan.seed(), input.key(), plan.runs()))
                .toArray(double[][]::new);
    }

    /**
     * Runs a study.
     *
     * @param analysis the analysed harness
     * @param plan     what is asked
     * @param cancel   asks to stop
     * @param progress takes how many runs are done, on any thread
     * @throws IllegalArgumentException when a spread names an element that is not there
     */
    public static ToleranceResult of(Analysis analysis, TolerancePlan plan, Cancel cancel, IntConsumer progress) {
        ToleranceStudy study = new ToleranceStudy(analysis, plan, cancel);
        return study.watches.isEmpty() || study.inputs.isEmpty()
                ? new ToleranceResult(plan, study.inputs, List.of(), 0, 0)
                : study.run(progress);
    }

    private ToleranceResult run(IntConsumer progress) {
        OptionalDouble[] nominal = values(Variation.NONE, states.memories());
        AtomicInteger done = new AtomicInteger();
        List<OptionalDouble[][]> runs = IntStream.range(0, (plan.runs() + TOGETHER - 1) / TOGETHER)
                .parallel()
                .mapToObj(block -> block(block, () -> progress.accept(done.incrementAndGet())))
                .flatMap(List::stream)
                .toList();
        List<Outcome> outcomes = new ArrayList<>();
        for (int watch = 0; watch < watches.size(); watch++) {
            if (nominal[watch].isPresent()) {
                outcome(watch, nominal[watch].getAsDouble(), runs).ifPresent(outcomes::add);
            }
        }
        int unsolved = (int) runs.stream()
                .filter(run -> List.of(run[0]).stream().anyMatch(OptionalDouble::isEmpty))
                .count();
        return new ToleranceResult(plan, inputs, outcomes, unsolved, 1 + plan.runs() * (1 + kinds.size()));
    }

    /** Runs one after the other. */
    private List<OptionalDouble[][]> block(int block, Runnable done) {
        SortedMap<StateId, SourceMemory> memories = states.memories();
        List<OptionalDouble[][]> runs = new ArrayList<>();
        for (int run = TOGETHER * block; run < Math.min(TOGETHER * (block + 1), plan.runs()); run++) {
            runs.add(run(run, memories));
            done.run();
        }
        return runs;
    }

    /** The results of a run: whole, then of each kind alone. */
    private OptionalDouble[][] run(int run, SortedMap<StateId, SourceMemory> memories) {
        OptionalDouble[][] values = new OptionalDouble[1 + kinds.size()][];
        values[0] = values(drawn(run, Optional.empty()), memories);
        for (int kind = 0; kind < kinds.size(); kind++) {
            values[1 + kind] =
                    kinds.size() == 1 ? values[0] : values(drawn(run, Optional.of(kinds.get(kind))), memories);
        }
        return values;
    }

    /** The values of a run; with a kind, all others at their means. */
    private Variation drawn(int run, Optional<SpreadKind> alone) {
        double[] values = new double[inputs.size()];
        for (int k = 0; k < values.length; k++) {
            Spread spread = inputs.get(k).spread();
            boolean varies = alone.isEmpty() || alone.get() == inputs.get(k).kind();
            values[k] = varies ? spread.at(shares[k][run]) : spread.mean();
        }
        return new DrawnValues(inputs, values);
    }

    private OptionalDouble[] values(Variation variation, SortedMap<StateId, SourceMemory> memories) {
        VariedStates.Varied varied = states.solve(variation, memories);
        return watches.stream().map(watch -> WatchedValue.of(watch, varied)).toArray(OptionalDouble[]::new);
    }

    private Optional<Outcome> outcome(int watch, double nominal, List<OptionalDouble[][]> runs) {
        List<OptionalDouble[][]> solved =
                runs.stream().filter(run -> run[0][watch].isPresent()).toList();
        if (solved.size() < 2) {
            return Optional.empty();
        }
        DoublePredicate beyond = watches.get(watch)::isBeyond;
        Sample sample = new Sample(column(solved, 0, watch));
        int unsolved = runs.size() - solved.size();
        int count = unsolved
                + (int) Arrays.stream(column(solved, 0, watch)).filter(beyond).count();
        return Optional.of(new Outcome(
                watches.get(watch),
                nominal,
                sample.mean(),
                sample.deviation(),
                sample.percentile(5),
                sample.percentile(95),
                sample.least(),
                sample.most(),
                unsolved,
                watches.get(watch).limit().isPresent() ? Optional.of(Chance.of(count, runs.size())) : Optional.empty(),
                sample.varies() ? shares(watch, solved) : Optional.empty()));
    }

    private Optional<Shares> shares(int watch, List<OptionalDouble[][]> solved) {
        List<OptionalDouble[][]> whole = solved.stream()
                .filter(run -> Arrays.stream(run).allMatch(values -> values[watch].isPresent()))
                .toList();
        double[][] alone = IntStream.range(0, kinds.size())
                .mapToObj(kind -> column(whole, 1 + kind, watch))
                .toArray(double[][]::new);
        return whole.size() < 2 ? Optional.empty() : Optional.of(Shares.of(kinds, column(whole, 0, watch), alone));
    }

    private static double[] column(List<OptionalDouble[][]> runs, int solution, int watch) {
        return runs.stream()
                .mapToDouble(run -> run[solution][watch].getAsDouble())
                .toArray();
    }
}
