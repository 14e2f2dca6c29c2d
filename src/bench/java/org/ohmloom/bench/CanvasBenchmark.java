package org.ohmloom.bench;

import java.util.concurrent.TimeUnit;
import org.ohmloom.draw.Scene;
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
import org.openjdk.jmh.annotations.Warmup;

/**
 * A large layout under a person's hand: time of the event thread for each step, in a window where there is a display; without
 * one every step paints the scene anew.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class CanvasBenchmark {

    @Param({"60", "1000", "5000"})
    private int wires;

    private CanvasDrill drill;

    @Setup
    public void open() {
        drill = new CanvasDrill(wires);
    }

    /** A step of dragging. */
    @Benchmark
    public void pan() {
        CanvasDrill.onEventThread(drill::pan);
    }

    /** A click of the wheel. */
    @Benchmark
    public void zoom() {
        CanvasDrill.onEventThread(drill::zoom);
    }

    /** The pointer moves on. */
    @Benchmark
    public void hover() {
        CanvasDrill.onEventThread(drill::hover);
    }

    /** Another thing is selected. */
    @Benchmark
    public void select() {
        CanvasDrill.onEventThread(drill::select);
    }

    /** The layout itself; on a thread of its own in the program. */
    @Benchmark
    public Scene layOut() {
        return drill.layOut();
    }
}
