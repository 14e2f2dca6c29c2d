package org.ohmloom.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.tolerance.Spreads;
import org.ohmloom.analysis.tolerance.TolerancePlan;
import org.ohmloom.analysis.tolerance.ToleranceResult;
import org.ohmloom.analysis.tolerance.ToleranceStudy;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.StateId;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Draws harnesses from the spreads of their parts and prints what that does to the results. */
@Command(
        name = "tolerance",
        mixinStandardHelpOptions = true,
        description =
                "Draws harnesses from the spreads of conductors, lengths, joints, loads, sources and air, solves each, and"
                        + " prints how far the results spread and what makes them.",
        footer = {
            "",
            "A spread is KIND=LOW..HIGH, in percent of the entered value or, for ambient, in K; KIND:ID=LOW..HIGH for",
            "one element; KIND=none for no spread. Kinds: conductor, length, joint, load, source, ambient. A shape may follow:",
            "even (unless given), peaked at the entered value, normal with 1 in 20 beyond the ends.",
            "",
            "Exit status: 0 worked out, 2 usage, or a file that cannot be read."
        })
final class ToleranceCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", description = "A harness file, *.harness.json.")
    private Path file;

    @Option(
            names = "--runs",
            paramLabel = "N",
            defaultValue = "" + TolerancePlan.USUAL_RUNS,
            description = "How many harnesses to draw; 200 unless given.")
    private int runs;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "" + TolerancePlan.USUAL_SEED,
            description = "What the draws follow from; the same seed draws the same. 1 unless given.")
    private long seed;

    @Option(names = "--load", paramLabel = "ID", description = "Only this load and what lies on its way.")
    private @Nullable String load;

    @Option(
            names = "--state",
            paramLabel = "NAME",
            description = "Only this operating state; otherwise the worst of each.")
    private @Nullable String state;

    @Option(
            names = "--spread",
            paramLabel = "SPREAD",
            description = "A spread in the place of the usual one, as in load=-5..15; may be given again.")
    private List<String> said = List.of();

    @Option(
            names = "--format",
            paramLabel = "text|json",
            defaultValue = "text",
            description = "Text for people or JSON for programs; text unless given.")
    private CheckCommand.Format format;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        Analysis analysis = Inputs.analysed(file);
        ToleranceResult result = result(analysis);
        PrintWriter out = spec.commandLine().getOut();
        if (format == CheckCommand.Format.json) {
            out.print(ToleranceJson.text(analysis, result));
        } else {
            ToleranceText.print(analysis, result, out);
        }
        return ExitStatus.CLEAN;
    }

    private ToleranceResult result(Analysis analysis) throws RefusedInputException {
        try {
            Spreads spreads = Spreads.of(analysis.evidence().tables());
            for (String each : said) {
                spreads = spreads.with(each);
            }
            TolerancePlan plan =
                    new TolerancePlan(runs, seed, spreads, state(analysis.harness()), load(analysis.harness()));
            return ToleranceStudy.of(analysis, plan, Cancel.NEVER, done -> {});
        } catch (IllegalArgumentException wrong) {
            throw new RefusedInputException(wrong.getMessage());
        }
    }

    private Optional<StateId> state(Harness harness) throws RefusedInputException {
        return state == null
                ? Optional.empty()
                : Optional.of(Inputs.states(harness, Optional.of(state)).get(0).id());
    }

    private Optional<ComponentId> load(Harness harness) throws RefusedInputException {
        if (load == null) {
            return Optional.empty();
        }
        List<String> loads = harness.components().all().stream()
                .filter(each -> each.device() instanceof Load)
                .map(each -> each.id().value())
                .toList();
        if (!loads.contains(load)) {
            throw Inputs.notInHarness("load", load, loads);
        }
        return Optional.of(new ComponentId(load));
    }
}
