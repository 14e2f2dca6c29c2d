package org.ohmloom.bench;

import java.util.concurrent.TimeUnit;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.CoachHarness;
import org.ohmloom.model.Harness;
import org.ohmloom.tables.WireTables;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Whole analyses: every state solved and heated to agreement, sizes, rules. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class AnalysisBenchmark {

    private final WireTables tables = WireTables.bundled();
    private final Harness pickup = Samples.pickup();
    private final Harness star = Samples.starOfThousandWires();
    private final Harness coach = CoachHarness.ofWires(500);

    /** The demonstration harness. */
    @Benchmark
    public Analysis pickup() {
        return Analyst.analyse(pickup, tables, Cancel.NEVER);
    }

    /** A coach of 500 wires: ten fuse boxes, 200 loads of four kinds, an output that switches. */
    @Benchmark
    public Analysis coachOfFiveHundredWires() {
        return Analyst.analyse(coach, tables, Cancel.NEVER);
    }

    /** A star of 1,000 wires. */
    @Benchmark
    public Analysis starOfThousandWires() {
        return Analyst.analyse(star, tables, Cancel.NEVER);
    }
}
