package org.ohmloom;

import org.ohmloom.cli.CommandLineStart;

/** The launcher: hands the arguments to the command line, which opens the workbench when no other command is given. */
public final class Ohmloom {

    private Ohmloom() {}

    /**
     * Starts Ohmloom.
     *
     * @param args the command and its options
     */
    public static void main(String[] args) {
        CommandLineStart.run(args);
    }
}
