package org.ohmloom.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.ohmloom.model.Harness;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.store.FileStamp;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** Reading a file, and saving one with its backup and every flush to the medium. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class FilesBenchmark {

    /** Which harness. */
    @Param({"rescue-pickup", "5,000 wires"})
    public String harness = "";

    private List<Harness> turns = List.of();
    private Path folder = Path.of("");
    private int turn;

    /** Writes the file that is read. */
    @Setup
    public void prepare() throws IOException, HarnessFileException {
        Harness one = harness.equals("rescue-pickup") ? Samples.pickup() : Samples.fiveThousandWires();
        turns = List.of(one, one.withTitleBlock(TitleBlock.of("Other title", "OTHER")));
        folder = Files.createTempDirectory("ohmloom-bench");
        HarnessFiles.write(file("read"), one);
    }

    /** Removes the files. */
    @TearDown
    public void clear() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }

    /** Reads. */
    @Benchmark
    public Harness read() throws HarnessFileException {
        return HarnessFiles.read(file("read"));
    }

    /** Saves another harness than the one on disk, for the same one would not be written again. */
    @Benchmark
    public FileStamp save() throws HarnessFileException {
        turn = 1 - turn;
        return HarnessFiles.write(file("save"), turns.get(turn));
    }

    private Path file(String name) {
        return folder.resolve(name + HarnessFiles.ENDING);
    }
}
