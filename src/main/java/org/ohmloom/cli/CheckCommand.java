package org.ohmloom.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.model.OperatingState;
import org.ohmloom.remedy.RemedyList;
import org.ohmloom.remedy.RemedySearch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Analyses a harness and prints results and findings. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Analyses a harness and prints results and findings.",
        footer = {
            "",
            "JSON is one object. channels[] has each channel with its pin, sensor, calibration, suggested rate, and",
            "the checks of rate, bandwidth and bus; calibrations[] the rows of each curve; buses[] each data bus with",
            "lengths, terminations, messages, load and worst response times; findings[] what is wrong. Keys are only",
            "ever added; a value that is not known is null."
        })
final class CheckCommand implements Callable<Integer> {

    /** Forms of the output. */
    enum Format {
        text,
        json
    }

    @Parameters(paramLabel = "FILE", description = "A harness file, *.harness.json.")
    private Path file;

    @Option(names = "--state", paramLabel = "NAME", description = "Only this operating state.")
    private @Nullable String state;

    @Option(
            names = "--format",
            paramLabel = "text|json",
            defaultValue = "text",
            description = "Text for people or JSON for programs; text unless given.")
    private Format format;

    @Option(names = "--remedies", description = "Also tries remedies for the findings on returns; takes many analyses.")
    private boolean remedies;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        Analysis analysis = Inputs.analysed(file);
        List<OperatingState> states = Inputs.states(analysis.harness(), Optional.ofNullable(state));
        Optional<List<RemedyList>> tried =
                remedies ? Optional.of(new RemedySearch(analysis, Cancel.NEVER).all()) : Optional.empty();
        PrintWriter out = spec.commandLine().getOut();
        if (format == Format.json) {
            out.print(CheckJson.text(analysis, states, tried));
        } else {
            CheckText.print(analysis, states, out);
            tried.ifPresent(lists -> RemediesText.print(lists, out));
        }
        return ExitStatus.of(analysis);
    }
}
