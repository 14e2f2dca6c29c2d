package org.ohmloom.bench;

import java.util.concurrent.TimeUnit;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.graph.Network;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.DcSolver;
import org.ohmloom.solve.NetworkSolution;
import org.ohmloom.solve.NetworkSolver;
import org.ohmloom.solve.Solution;
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

/** One solution of a network: the demonstration harness at night, and a chain of 5,000 links. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SolveBenchmark {

    private final Harness pickup = Samples.pickup();
    private final Network night = Analyst.analyse(pickup, WireTables.bundled(), Cancel.NEVER)
            .solution(new StateId("night-rescue"))
            .orElseThrow()
            .network();
    private final Network chain = Samples.chainOfFiveThousand();

    /** The demonstration harness in its heaviest state, with what reaches each load. */
    @Benchmark
    public Solution pickupAtNight() {
        return DcSolver.solve(night, pickup, () -> false);
    }

    /** The chain. */
    @Benchmark
    public NetworkSolution chainOfFiveThousand() {
        return NetworkSolver.solve(chain, () -> false);
    }
}
