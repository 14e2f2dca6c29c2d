package org.ohmloom.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.SizedHarness;
import org.ohmloom.review.Cautions;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.units.Formats;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a copy with conductors and protective devices chosen, and prints each choice and why. */
@Command(
        name = "size",
        mixinStandardHelpOptions = true,
        description = "Writes a copy with conductors and protective devices chosen; prints each choice and why.")
final class SizeCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", description = "A harness file, *.harness.json.")
    private Path file;

    @Option(names = "--out", paramLabel = "FILE", required = true, description = "Where to write the copy.")
    private Path target;

    @Option(
            names = "--anew",
            description =
                    "Choose every size anew that is not locked, also those that are entered and serve, and put the type"
                            + " and rating proposed for a protective device in its place where that mends what it does not meet.")
    private boolean anew;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        Inputs.refuseSame(file, target);
        Analysis start = Inputs.analysed(file);
        SizedHarness sized = anew ? SizedHarness.anew(start, Cancel.NEVER) : SizedHarness.of(start, Cancel.NEVER);
        HarnessFiles.write(target, sized.analysis().harness());
        PrintWriter out = spec.commandLine().getOut();
        ChoicesText.print(sized, out);
        out.println();
        out.println("Copper " + Formats.kilograms(start.totals().copperKg()) + " in the harness read, "
                + Formats.kilograms(sized.analysis().totals().copperKg()) + " in the copy.");
        out.println("Written to " + target + ".");
        out.println();
        Analysis analysis = sized.analysis();
        FindingsText.summary(analysis, Integer.MAX_VALUE, out);
        out.println();
        out.println(Wrap.text(Cautions.paragraph().english(), 100));
        return ExitStatus.of(analysis);
    }
}
