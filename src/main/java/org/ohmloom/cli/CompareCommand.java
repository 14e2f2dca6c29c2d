package org.ohmloom.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.revision.Change;
import org.ohmloom.analysis.revision.ElementChange;
import org.ohmloom.analysis.revision.FieldChange;
import org.ohmloom.analysis.revision.FindingChange;
import org.ohmloom.analysis.revision.ResultChange;
import org.ohmloom.analysis.revision.RevisionComparison;
import org.ohmloom.pack.ChangeSheet;
import org.ohmloom.review.Cautions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the change sheet between two revisions and prints what differs. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description = "Writes the change sheet between two revisions: PDF, and CSV beside each table.",
        footer = {"", "Exit status: 0 written, 2 usage, or a file that cannot be read."})
final class CompareCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "OLD", description = "The file of the old revision.")
    private Path old;

    @Parameters(index = "1", paramLabel = "NEW", description = "The file of the new revision.")
    private Path now;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "The folder to write to.")
    private Path directory;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        Analysis before = Inputs.analysed(old);
        Analysis after = Inputs.analysed(now);
        RevisionComparison comparison = RevisionComparison.of(before, after);
        List<Path> written = ChangeSheet.write(comparison, directory);
        PrintWriter out = spec.commandLine().getOut();
        print(comparison, out);
        out.println();
        out.println("Written to " + directory + ":");
        written.forEach(path -> out.println("  " + path.getFileName()));
        out.println();
        out.println(Wrap.text(Cautions.paragraph().english(), 100));
        return ExitStatus.CLEAN;
    }

    private static void print(RevisionComparison comparison, PrintWriter out) {
        if (comparison.isSame()) {
            out.println("Both say the same.");
            return;
        }
        if (!comparison.elements().isEmpty()) {
            out.println("ADDED, REMOVED AND CHANGED");
            comparison.elements().forEach(change -> out.println("  " + line(change)));
        }
        if (!comparison.results().isEmpty()) {
            TextTable table =
                    new TextTable().left("OF").left("NUMBER").right("BEFORE").right("AFTER");
            comparison.results().forEach(change -> row(change, table));
            out.println();
            out.println("WHAT IT DOES TO THE NUMBERS (by 1 % or more)");
            table.print(out);
        }
        if (!comparison.findings().isEmpty()) {
            out.println();
            out.println("WHAT IT DOES TO THE FINDINGS");
            comparison.findings().forEach(change -> out.println("  " + line(change)));
        }
    }

    private static String line(ElementChange change) {
        String what = change.change().word() + " " + change.kind() + " " + change.id();
        if (change.change() == Change.RENUMBERED) {
            return what + ", was " + change.was();
        }
        String name = change.name().isEmpty() ? "" : " (" + change.name() + ")";
        if (change.change() != Change.CHANGED) {
            return what + name;
        }
        List<String> fields =
                change.fields().stream().map(CompareCommand::field).toList();
        return what + name + ": " + String.join("; ", fields);
    }

    private static String field(FieldChange field) {
        return field.field() + " " + orNone(field.before()) + " -> " + orNone(field.after());
    }

    private static String orNone(String value) {
        return value.isEmpty() ? "none" : value;
    }

    private static void row(ResultChange change, TextTable table) {
        table.row(
                change.subject(),
                change.quantity(),
                ResultChange.text(change.before()),
                ResultChange.text(change.after()));
    }

    private static String line(FindingChange change) {
        return change.word() + " "
                + RevisionComparison.standing(change.finding()).english() + " "
                + change.finding().rule() + ": " + change.finding().message();
    }
}
