package org.ohmloom.workbench.export;

import java.awt.EventQueue;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.pack.BuildPack;
import org.ohmloom.pack.PackException;
import org.ohmloom.pack.PackOptions;
import org.ohmloom.pack.Progress;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.words.Words;

/** Writes a build pack on a thread of its own; what it tells arrives on the event thread. */
final class PackExport {
    private static final Words WORDS = Words.of("export");

    private static final Logger LOG = Logger.getLogger(PackExport.class.getName());

    private final Analysis analysis;
    private final Consumer<Step> steps;
    private final Consumer<Result> end;
    private final AtomicBoolean cancelled = new AtomicBoolean();
    private boolean running;

    /**
     * How far it got.
     *
     * @param done  steps done
     * @param total all steps
     * @param what  what is made now
     */
    record Step(int done, int total, Text what) {}

    /**
     * How it ended.
     *
     * @param files   the files written; none when it was cancelled
     * @param problem why it failed, in one line
     */
    record Result(List<Path> files, Optional<String> problem) {}

    PackExport(Analysis analysis, Consumer<Step> steps, Consumer<Result> end) {
        this.analysis = analysis;
        this.steps = steps;
        this.end = end;
    }

    /** Starts writing. */
    void start(Path folder, PackOptions options) {
        running = true;
        cancelled.set(false);
        Thread writer = new Thread(() -> write(folder, options), "build pack");
        writer.setDaemon(true);
        writer.start();
    }

    boolean isRunning() {
        return running;
    }

    /** Asks the writing to stop; nothing is left half written. */
    void cancel() {
        cancelled.set(true);
    }

    private void write(Path folder, PackOptions options) {
        Result result;
        try {
            result = new Result(BuildPack.write(analysis, folder, options, progress()), Optional.empty());
        } catch (CancellationException stopped) {
            result = new Result(List.of(), Optional.empty());
        } catch (PackException refused) {
            result = new Result(List.of(), Optional.of(Words.said(refused)));
        } catch (RuntimeException defect) {
            LOG.log(Level.WARNING, "the build pack failed", defect);
            result = new Result(List.of(), Optional.of(WORDS.get("pack-export.the-build-pack-was", defect)));
        }
        Result ended = result;
        EventQueue.invokeLater(() -> {
            running = false;
            end.accept(ended);
        });
    }

    private Progress progress() {
        return new Progress() {
            @Override
            public boolean isCancelled() {
                return cancelled.get();
            }

            @Override
            public void step(int done, int total, Text what) {
                EventQueue.invokeLater(() -> steps.accept(new Step(done, total, what)));
            }
        };
    }
}
