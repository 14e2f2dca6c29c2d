package org.ohmloom.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.ohmloom.edit.SettingText;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Setting;
import org.ohmloom.model.StateId;
import org.ohmloom.review.Cautions;
import org.ohmloom.signal.pins.Preferences;
import org.ohmloom.signal.unit.ChannelPlan;
import org.ohmloom.signal.unit.UnitDescription;
import org.ohmloom.signal.unit.UnitLibrary;
import org.ohmloom.signal.unit.UnitSheetException;
import org.ohmloom.signal.wiring.OutputOff;
import org.ohmloom.signal.wiring.WiringMade;
import org.ohmloom.store.CsvTableException;
import org.ohmloom.store.HarnessFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a copy with channels assigned to pins and wired. */
@Command(
        name = "assign",
        mixinStandardHelpOptions = true,
        description = "Writes a copy with sensors and outputs assigned to pins of control units, and wired to them.")
final class AssignCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", description = "A harness file, *.harness.json.")
    private Path file;

    @Option(names = "--out", paramLabel = "FILE", required = true, description = "Where to write the copy.")
    private Path target;

    @Option(
            names = "--unit",
            paramLabel = "ID=UNIT[@BREAKOUT]",
            description = "Put in a control unit first: one that comes with the program, or a sheet ending in .csv.")
    private List<String> units = new ArrayList<>();

    @Option(
            names = "--without",
            paramLabel = "ID",
            split = ",",
            description = "Sensors, loads or relays that are to get no pin.")
    private List<String> without = new ArrayList<>();

    @Option(names = "--no-wires", description = "Assign only, make no wires.")
    private boolean noWires;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        Inputs.refuseSame(file, target);
        Harness harness = HarnessFiles.read(file);
        for (String unit : units) {
            harness = with(harness, unit);
        }
        ChannelPlan plan =
                ChannelPlan.of(harness, ChannelsCommand.components(file, harness, without), Preferences.USUAL);
        PrintWriter out = spec.commandLine().getOut();
        ChannelsText.print(plan, out);
        if (plan.edit().isEmpty()) {
            out.println("Nothing was written.");
            cautions(out);
            return ExitStatus.ERRORS_FOUND;
        }
        Harness planned = plan.edit().get().apply(harness);
        if (!noWires) {
            WiringMade made = WiringMade.of(planned);
            if (made.edit().isPresent()) {
                planned = made.edit().get().apply(planned);
            }
            out.println();
            out.println(
                    made.edit().isEmpty() && made.problems().isEmpty()
                            ? "Everything planned is wired already."
                            : made.wires().size() + " wires, "
                                    + made.splices().size() + " splices and "
                                    + made.cables().size() + " twisted pairs made.");
            made.fuses().forEach(each -> out.println(each.name() + " (" + each.id() + ") made."));
            made.buses()
                    .forEach(bus -> out.println("Data bus " + bus.id() + " joins "
                            + bus.nodes().stream()
                                    .map(node -> node.unit().value())
                                    .collect(Collectors.joining(", "))
                            + (bus.terminations().isEmpty() ? "." : "; terminations at ")
                            + bus.terminations().stream()
                                    .map(each -> each.high().text())
                                    .collect(Collectors.joining(" and "))
                            + (bus.terminations().isEmpty() ? "" : ".")));
            made.problems().forEach(each -> out.println("Not made: " + each + "."));
            planned = withOutputsOn(planned, out);
        }
        HarnessFiles.write(target, planned);
        out.println("Written to " + target + ".");
        cautions(out);
        return ExitStatus.CLEAN;
    }

    private static void cautions(PrintWriter out) {
        out.println();
        out.println(Wrap.text(Cautions.paragraph().english(), 100));
    }

    /** Outputs that no state sets, set in those that ask for what they serve. */
    private static Harness withOutputsOn(Harness planned, PrintWriter out) {
        Harness now = planned;
        for (OutputOff off : OutputOff.of(planned)) {
            String what = "Output " + off.output() + " for " + off.served().id();
            for (Map.Entry<StateId, Setting> each : off.proposed().entrySet()) {
                now = off.set(now, each.getKey(), SettingText.of(each.getValue()))
                        .apply(now);
            }
            out.println(
                    off.proposed().isEmpty()
                            ? what + " is on in no operating state, and none asks for it: set it in the states."
                            : what + " set in the operating states: "
                                    + off.proposed().entrySet().stream()
                                            .map(each -> each.getKey() + " " + SettingText.of(each.getValue()))
                                            .collect(Collectors.joining(", "))
                                    + ".");
        }
        return now;
    }

    private Harness with(Harness harness, String asked) throws RefusedInputException {
        int equals = asked.indexOf('=');
        int at = asked.lastIndexOf('@');
        if (equals <= 0) {
            throw new RefusedInputException(
                    "--unit " + asked + ": write an id, '=' and a unit, as --unit U2=input-module@B1");
        }
        String name = at > equals ? asked.substring(equals + 1, at) : asked.substring(equals + 1);
        try {
            Optional<BreakoutId> place =
                    at > equals ? Optional.of(new BreakoutId(asked.substring(at + 1))) : Optional.empty();
            ComponentId id = new ComponentId(asked.substring(0, equals));
            if (harness.element(id.value()).isPresent()) {
                throw new RefusedInputException("--unit " + asked + ": '" + id + "' is in the harness already");
            }
            UnitDescription description = UnitLibrary.find(name);
            return description.into(harness, id, description.title(), place).apply(harness);
        } catch (CsvTableException | UnitSheetException | IllegalArgumentException refused) {
            throw new RefusedInputException("--unit " + asked.substring(0, equals) + ": " + refused.getMessage());
        }
    }
}
