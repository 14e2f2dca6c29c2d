package org.ohmloom.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.draw.ShopHarness;
import org.ohmloom.model.Harness;
import org.ohmloom.pack.BuildPack;
import org.ohmloom.pack.PackException;
import org.ohmloom.pack.PackOptions;
import org.ohmloom.pack.Progress;
import org.ohmloom.tables.WireTables;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** The whole build pack of a harness of 1,000 wires, from the results of its analysis to the files on the disk. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
public class PackBenchmark {

    private static final long SEED = 1;
    private static final int WIRES = 1000;

    private final Analysis analysis = core(ShopHarness.of(SEED, WIRES));
    private Path folder = Path.of("");

    /** Currents, temperatures and sizes wire by wire; the studies that come after them are left out. */
    private static Analysis core(Harness harness) {
        AtomicReference<Analysis> first = new AtomicReference<>();
        try {
            return Analyst.analyse(
                    harness,
                    WireTables.bundled(),
                    () -> first.get() != null,
                    soFar -> first.compareAndSet(null, soFar));
        } catch (CancellationException stopped) {
            return first.get();
        }
    }

    /** A folder for the files. */
    @Setup
    public void makeFolder() throws IOException {
        folder = Files.createTempDirectory("ohmloom-pack");
    }

    /** Every document on the usual paper. */
    @Benchmark
    public List<Path> packOfThousandWires() throws PackException {
        return BuildPack.write(analysis, folder, PackOptions.ALL, Progress.NONE);
    }

    /** Takes the files away. */
    @TearDown
    public void removeFolder() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
