package org.ohmloom.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.NearestText;
import org.ohmloom.review.Cautions;
import org.ohmloom.signal.pins.PinPlan;
import org.ohmloom.signal.pins.Preferences;
import org.ohmloom.signal.unit.ChannelPlan;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.store.JsonText;
import org.ohmloom.tables.WireTables;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints which sensor, load or relay goes to which pin of which control unit. */
@Command(
        name = "channels",
        mixinStandardHelpOptions = true,
        description = "Plans which sensor or output goes to which pin of which control unit and prints the plan.",
        footer = {
            "",
            "JSON has channels[]: id, unit, pin, sensor (or load, relay), direction, supplyPin, returnPin,",
            "suggestedHertz and rateHertz. 'check --format json' has them with what was checked of each."
        })
final class ChannelsCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", description = "A harness file, *.harness.json.")
    private Path file;

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text", description = "text or json.")
    private String format;

    @Option(
            names = "--without",
            paramLabel = "ID",
            split = ",",
            description = "Sensors, loads or relays that are to get no pin.")
    private List<String> without = new ArrayList<>();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        if (!format.equals("text") && !format.equals("json")) {
            throw new RefusedInputException("--format is text or json, not '" + format + "'");
        }
        Harness harness = HarnessFiles.read(file);
        ChannelPlan plan = ChannelPlan.of(harness, components(file, harness, without), Preferences.USUAL);
        PrintWriter out = spec.commandLine().getOut();
        boolean found = plan.answer() instanceof PinPlan.Found;
        if (format.equals("json")) {
            out.println(JsonText.object(root -> {
                root.put("harness", harness.titleBlock().number());
                root.put("possible", found);
                ChannelsJson.write(
                        harness, plan.channels(), WireTables.bundled().signals(), root);
            }));
        } else {
            ChannelsText.print(plan, out);
            out.println();
            out.println(Wrap.text(Cautions.paragraph().english(), 100));
        }
        return found ? ExitStatus.CLEAN : ExitStatus.ERRORS_FOUND;
    }

    /**
     * The components of those identities.
     *
     * @throws RefusedInputException when there is no such component
     */
    static Set<ComponentId> components(Path file, Harness harness, List<String> asked) throws RefusedInputException {
        Set<ComponentId> ids = new TreeSet<>();
        List<String> known =
                harness.components().ids().stream().map(ComponentId::value).toList();
        for (String each : asked) {
            if (!known.contains(each)) {
                throw new RefusedInputException(
                        file + ": no component '" + each + "'" + NearestText.question(each, known));
            }
            ids.add(new ComponentId(each));
        }
        return ids;
    }
}
