package org.ohmloom.cli;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.workbench.Workbench;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Opens the workbench; where there is no display, says so and prints the file's analysis instead. */
@Command(
        name = "open",
        mixinStandardHelpOptions = true,
        description = "Opens the workbench; without a display prints the file's analysis instead.")
final class OpenCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "A harness file, *.harness.json.")
    private @Nullable Path file;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        if (file != null && !displayed()) {
            PrintWriter out = spec.commandLine().getOut();
            spec.commandLine()
                    .getErr()
                    .println("ohmloom: there is no display here; the analysis of " + file + " follows.");
            Analysis analysis = Inputs.analysed(file);
            CheckText.print(analysis, List.copyOf(analysis.harness().states().all()), out);
            return ExitStatus.of(analysis);
        }
        return open(spec, Optional.ofNullable(file));
    }

    /** Opens the workbench, or says that there is no display. */
    static int open(CommandSpec spec, Optional<Path> file) {
        if (!displayed()) {
            PrintWriter err = spec.commandLine().getErr();
            err.println("ohmloom: there is no display here; 'ohmloom check FILE' prints an analysis instead.");
            return ExitStatus.UNUSABLE;
        }
        Workbench.open(file);
        return ExitStatus.CLEAN;
    }

    /** Whether a window can be shown; a Java without its window libraries counts as no display. */
    private static boolean displayed() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
        } catch (AWTError | HeadlessException | LinkageError none) {
            return false;
        }
    }
}
