package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command line: without a command it opens the workbench. */
@Command(
        name = "ohmloom",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = "Computes, checks and documents the wiring of vehicles, boats and machines.",
        subcommands = {
            OpenCommand.class,
            CheckCommand.class,
            ChannelsCommand.class,
            AssignCommand.class,
            SizeCommand.class,
            PackCommand.class,
            ToleranceCommand.class,
            CompareCommand.class,
            RecordCommand.class,
            TablesCommand.class,
            ManualCommand.class,
            CommandLine.HelpCommand.class
        },
        footer = {"", "Exit status: 0 no error findings, 1 error findings, 2 usage, or a file that cannot be read."})
public final class OhmloomCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    /**
     * Runs a command line and gives its exit status.
     *
     * @param arguments command, options and files
     * @param out       takes results
     * @param err       takes messages
     */
    public static int run(PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine line = new CommandLine(new OhmloomCommand())
                .setOut(out)
                .setErr(err)
                .setUsageHelpAutoWidth(false)
                .setExecutionExceptionHandler(new PlainRefusals())
                .setParameterExceptionHandler((wrong, given) -> usage(wrong));
        int status = line.execute(arguments);
        out.flush();
        err.flush();
        return status;
    }

    @Override
    public Integer call() {
        return OpenCommand.open(spec, Optional.empty());
    }

    private static int usage(ParameterException wrong) {
        CommandLine command = wrong.getCommandLine();
        PrintWriter err = command.getErr();
        err.println("ohmloom: " + PlainRefusals.oneLine(wrong.getMessage()));
        err.println("Try '" + command.getCommandSpec().qualifiedName() + " --help'.");
        return ExitStatus.UNUSABLE;
    }
}
