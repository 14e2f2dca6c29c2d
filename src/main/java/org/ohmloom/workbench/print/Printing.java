package org.ohmloom.workbench.print;

import java.awt.EventQueue;
import java.awt.print.PrinterAbortException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.print.DocFlavor;
import javax.print.PrintException;
import javax.print.PrintService;
import javax.print.SimpleDoc;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.print.attribute.standard.Copies;
import javax.print.attribute.standard.JobName;
import org.ohmloom.draw.Paper;
import org.ohmloom.pack.PrintedDocument;
import org.ohmloom.pack.PrintedSheets;
import org.ohmloom.pack.Progress;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.words.Words;

/** Prints on a thread of its own; what it tells arrives on the event thread. */
final class Printing {

    private static final Logger LOG = Logger.getLogger(Printing.class.getName());

    private final Consumer<Step> steps;
    private final Consumer<Result> end;
    private final AtomicBoolean cancelled = new AtomicBoolean();
    private boolean running;

    /**
     * How far it got.
     *
     * @param done  sheets handed to the printer
     * @param total all sheets of the job
     */
    record Step(int done, int total) {}

    /**
     * How it ended.
     *
     * @param sheets    sheets printed, copies not counted
     * @param cancelled whether it was stopped
     * @param problem   why it failed, in one line
     */
    record Result(int sheets, boolean cancelled, Optional<String> problem) {}

    /**
     * What to print.
     *
     * @param service  the printer
     * @param document the document
     * @param sheets   its sheets, counted from 0
     * @param onto     paper to shrink larger sheets onto; empty prints true to size
     * @param copies   how often, 1 or more
     */
    record Job(
            PrintService service, PrintedDocument document, List<Integer> sheets, Optional<Paper> onto, int copies) {}

    /**
     * Printing.
     *
     * @param steps told before each sheet
     * @param end   told how it ended
     */
    Printing(Consumer<Step> steps, Consumer<Result> end) {
        this.steps = steps;
        this.end = end;
    }

    /** Begins to print. */
    void start(Job job) {
        running = true;
        cancelled.set(false);
        Thread printer = new Thread(() -> print(job), "printing");
        printer.setDaemon(true);
        printer.start();
    }

    boolean isRunning() {
        return running;
    }

    /** Asks the printing to stop before the next sheet. */
    void cancel() {
        cancelled.set(true);
    }

    private void print(Job job) {
        Result result = result(job);
        EventQueue.invokeLater(() -> {
            running = false;
            end.accept(result);
        });
    }

    private Result result(Job job) {
        try {
            PrintedSheets sheets = new PrintedSheets(job.document(), job.sheets(), job.onto(), progress());
            boolean counts = job.service()
                    .isAttributeValueSupported(new Copies(job.copies()), DocFlavor.SERVICE_FORMATTED.PAGEABLE, null);
            PrintRequestAttributeSet wanted =
                    new HashPrintRequestAttributeSet(new JobName(job.document().title(), null));
            if (counts) {
                wanted.add(new Copies(job.copies()));
            }
            for (int copy = 0; copy < (counts ? 1 : job.copies()); copy++) {
                job.service()
                        .createPrintJob()
                        .print(new SimpleDoc(sheets, DocFlavor.SERVICE_FORMATTED.PAGEABLE, null), wanted);
            }
            return new Result(cancelled.get() ? 0 : job.sheets().size(), cancelled.get(), Optional.empty());
        } catch (PrintException refused) {
            boolean stopped = cancelled.get() || refused.getCause() instanceof PrinterAbortException;
            return stopped
                    ? new Result(0, true, Optional.empty())
                    : new Result(0, false, Optional.of(Words.said(refused)));
        } catch (RuntimeException defect) {
            LOG.log(Level.WARNING, "printing failed", defect);
            return new Result(0, cancelled.get(), Optional.of(String.valueOf(defect)));
        }
    }

    private Progress progress() {
        return new Progress() {
            @Override
            public boolean isCancelled() {
                return cancelled.get();
            }

            @Override
            public void step(int done, int total, Text what) {
                EventQueue.invokeLater(() -> steps.accept(new Step(done, total)));
            }
        };
    }
}
