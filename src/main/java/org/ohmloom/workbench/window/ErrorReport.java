package org.ohmloom.workbench.window;

import java.awt.Component;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.JOptionPane;
import javax.swing.SwingUtilities;
import org.ohmloom.workbench.words.Words;

/** Says in a plain sentence that a defect was met, offers its details for copying, and never speaks over itself. */
public final class ErrorReport implements Thread.UncaughtExceptionHandler {
    private static final Words WORDS = Words.of("window");

    private static final Logger LOG = Logger.getLogger(ErrorReport.class.getName());

    private final Supplier<Component> parent;
    private final Journal journal;
    private final AtomicBoolean speaking = new AtomicBoolean();

    public ErrorReport(Supplier<Component> parent, Journal journal) {
        this.parent = parent;
        this.journal = journal;
    }

    @Override
    public void uncaughtException(Thread thread, Throwable defect) {
        LOG.log(Level.SEVERE, WORDS.get("error-report.a-defect-on-thread", thread.getName()), defect);
        if (speaking.compareAndSet(false, true)) {
            SwingUtilities.invokeLater(() -> {
                try {
                    show(defect);
                } finally {
                    speaking.set(false);
                }
            });
        }
    }

    private void show(Throwable defect) {
        Object[] answers = {WORDS.get("error-report.go-on"), WORDS.get("error-report.copy-details")};
        int answer = JOptionPane.showOptionDialog(
                parent.get(),
                DialogText.of(
                        WORDS.get("error-report.something-went-wrong-inside"),
                        WORDS.get("error-report.something-went-wrong-inside.about"),
                        60),
                "Ohmloom",
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.ERROR_MESSAGE,
                null,
                answers,
                answers[0]);
        if (answer == 1) {
            Toolkit.getDefaultToolkit()
                    .getSystemClipboard()
                    .setContents(new StringSelection(details(defect, journal)), null);
        }
    }

    /** What a developer needs to know: versions, what was done last, the trace. */
    static String details(Throwable defect, Journal journal) {
        StringWriter trace = new StringWriter();
        PrintWriter writer = new PrintWriter(trace);
        writer.println(WORDS.get("error-report.ohmloom-on-java", Runtime.version(), System.getProperty("os.name")));
        writer.println(WORDS.get("error-report.done-last", String.join(", ", journal.notes())));
        Throwable cause = defect;
        while (cause != null) {
            writer.println(cause);
            for (StackTraceElement frame : cause.getStackTrace()) {
                writer.println(WORDS.get("error-report.at", frame));
            }
            cause = cause.getCause();
        }
        writer.flush();
        return trace.toString();
    }
}
