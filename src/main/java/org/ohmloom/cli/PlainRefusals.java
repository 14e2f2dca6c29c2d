package org.ohmloom.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.ohmloom.analysis.AnalysisRefusedException;
import org.ohmloom.pack.PackException;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.tables.TableFormatException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Tells what went wrong in one line, never with a stack trace. */
final class PlainRefusals implements IExecutionExceptionHandler {

    @Override
    public int handleExecutionException(Exception failed, CommandLine command, ParseResult parsed) {
        command.getErr().println("ohmloom: " + sentence(failed));
        return ExitStatus.UNUSABLE;
    }

    private static String sentence(Exception failed) {
        boolean expected = failed instanceof HarnessFileException
                || failed instanceof AnalysisRefusedException
                || failed instanceof TableFormatException
                || failed instanceof PackException
                || failed instanceof RefusedInputException
                || failed instanceof IOException
                || failed instanceof UncheckedIOException;
        String message = failed.getMessage() == null ? "" : oneLine(failed.getMessage());
        return expected
                ? message
                : "this should not have happened, please report it: "
                        + failed.getClass().getSimpleName()
                        + (message.isEmpty() ? "" : ": " + message);
    }

    /** The text on one line. */
    static String oneLine(String text) {
        return text.strip().replaceAll("\\s*\\R\\s*", "; ");
    }
}
