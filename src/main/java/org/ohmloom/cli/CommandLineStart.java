package org.ohmloom.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Runs the command line on the standard streams, in UTF-8 whatever the machine's own encoding. */
public final class CommandLineStart {

    private CommandLineStart() {}

    /**
     * Runs a command; ends the virtual machine with the exit status unless a window was opened and all went well.
     *
     * @param arguments the command and its options
     */
    public static void run(String... arguments) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int status = OhmloomCommand.run(out, err, arguments);
        if (status != ExitStatus.CLEAN) {
            System.exit(status);
        }
    }
}
