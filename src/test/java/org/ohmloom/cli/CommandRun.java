package org.ohmloom.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * What one command gave.
 *
 * @param status exit status
 * @param out    standard output
 * @param err    standard error
 */
record CommandRun(int status, String out, String err) {

    /** Runs a command in this virtual machine. */
    static CommandRun of(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = OhmloomCommand.run(new PrintWriter(out), new PrintWriter(err), arguments);
        return new CommandRun(status, out.toString(), err.toString());
    }
}
