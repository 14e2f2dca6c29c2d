package org.ohmloom.bench;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.SceneLayout;
import org.ohmloom.draw.SceneOptions;
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

/** The layout board of the demonstration harness. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class BoardBenchmark {

    private final Harness pickup = Samples.pickup();
    private final SceneLayout layout = new SceneLayout(SceneFonts.load());

    /** Bundles and lengths. */
    @Benchmark
    public Scene bundles() {
        return layout.layoutBoard(pickup, Optional.empty(), Optional.empty(), SceneOptions.PLAIN);
    }

    /** Every wire in its bundle. */
    @Benchmark
    public Scene wires() {
        return layout.layoutBoard(pickup, Optional.empty(), Optional.empty(), SceneOptions.PLAIN.withWires(true));
    }
}
