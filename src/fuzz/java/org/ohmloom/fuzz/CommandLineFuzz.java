package org.ohmloom.fuzz;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import org.ohmloom.cli.OhmloomCommand;

/**
 * Words of the command line, made up or of the program, in any order: status 0, 1 or 2, and with 2 one line of what is wrong.
 * What would open a window or write files is left out.
 */
public final class CommandLineFuzz {

    private static final String[] WORDS = {
        "check",
        "tables",
        "help",
        "manual",
        "channels",
        "bus",
        "--format",
        "json",
        "text",
        "--state",
        "--help",
        "--version",
        "--out",
        "-x",
        "--",
        "@none",
        "examples/no-such.harness.json",
        "examples",
        "",
        " ",
        "=",
        "--format=json"
    };

    private CommandLineFuzz() {}

    /** One try. */
    public static void fuzzerTestOneInput(FuzzedDataProvider data) {
        List<String> words = new ArrayList<>();
        int count = data.consumeInt(0, 6);
        for (int word = 0; word < count; word++) {
            words.add(data.consumeBoolean() ? data.pickValue(WORDS) : data.consumeString(12));
        }
        if (words.stream().anyMatch(word -> word.matches("(?i)open|pack|compare|size|assign|record"))) {
            return;
        }
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = OhmloomCommand.run(new PrintWriter(out), new PrintWriter(err), words.toArray(String[]::new));
        if (status < 0 || status > 2) {
            throw new AssertionError("status " + status + " of " + words);
        }
        if (err.toString().contains("\tat ")) {
            throw new AssertionError("a stack trace for " + words);
        }
    }
}
