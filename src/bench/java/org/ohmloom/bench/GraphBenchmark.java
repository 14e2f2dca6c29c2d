package org.ohmloom.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.ReturnLoop;
import org.ohmloom.graph.ReturnLoops;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.Harness;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Ways of 5,000 wires over 1,000 segments, and the loops of 20,000 and of 100,000 return conductors. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class GraphBenchmark {

    private final Harness wires = Samples.fiveThousandWires();
    private final Network returns = Samples.returnsWithLoops(19_800, 90, 95, 200);
    private final Network manyReturns = Samples.returnsWithLoops(99_000, 98, 100, 1000);

    /** Routes every wire. */
    @Benchmark
    public Routes routes() {
        return Routes.of(wires);
    }

    /** Finds the 200 loops. */
    @Benchmark
    public List<ReturnLoop> returnLoops() {
        return ReturnLoops.of(returns).loops();
    }

    /** Finds the 1,000 loops of 100,000 conductors in one block. */
    @Benchmark
    public List<ReturnLoop> thousandReturnLoops() {
        return ReturnLoops.of(manyReturns).loops();
    }
}
