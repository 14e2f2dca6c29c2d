package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.DutySweep;
import org.ohmloom.analysis.Totals;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.review.Cautions;
import org.ohmloom.review.Severity;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Formats;

/** The analysis as text for people: a screen of summary with the worst first, then the details. */
final class CheckText {

    private static final int FINDINGS_IN_SUMMARY = 8;

    private CheckText() {}

    static void print(Analysis analysis, List<OperatingState> states, PrintWriter out) {
        heading(analysis, out);
        states(analysis, states, out);
        EnergyText.print(analysis, states, out);
        FindingsText.summary(analysis, FINDINGS_IN_SUMMARY, out);
        out.println();
        out.println(Wrap.text(Cautions.paragraph().english(), 100));
        for (OperatingState state : states) {
            loads(analysis, state, out);
        }
        WiresText.print(analysis, out);
        SegmentsText.print(analysis, out);
        ConstraintsText.print(analysis, out);
        out.println();
        JointText.print(analysis.evidence().joint(), out);
        HeatText.print(analysis, out);
        WiresText.devices(analysis, out);
        ProtectionText.print(analysis.evidence().protection(), out);
        StartUpText.print(analysis, states, out);
        OutputsText.print(analysis, states, out);
        DutyText.print(analysis, DutySweep.of(analysis, Cancel.NEVER), out);
        EnvelopeText.print(analysis, out);
        ChargeText.print(analysis, states, out);
        OffsetsText.print(analysis, states, out);
        LoopsText.print(analysis, states, out);
        SensorsText.print(analysis, states, out);
        LossesText.print(analysis, states, out);
        CouplingText.print(analysis, out);
        BusesText.print(analysis, out);
        ReadingsText.print(analysis, out);
        FindingsText.details(analysis, out);
    }

    private static void heading(Analysis analysis, PrintWriter out) {
        Harness harness = analysis.harness();
        Totals totals = analysis.totals();
        out.println(harness.titleBlock().title() + "  (" + harness.titleBlock().number() + ", revision "
                + harness.titleBlock().currentRevision() + ")");
        out.println(String.format(
                Locale.ROOT,
                "Design basis: %s. %s nominal, %s allowed drop unless a load says otherwise.",
                analysis.evidence().basis().title(),
                Formats.volts(harness.rules().nominalVolts()),
                Formats.percent(harness.rules().allowedDropFraction())));
        out.println(String.format(
                Locale.ROOT,
                "%d wires to make, %s of conductor, %s of copper, %d connectors.",
                totals.wires(),
                Formats.metres(totals.lengthMetres()),
                Formats.kilograms(totals.copperKg()),
                totals.connectors()));
        out.println();
    }

    private static void states(Analysis analysis, List<OperatingState> states, PrintWriter out) {
        TextTable table = new TextTable()
                .left("OPERATING STATE")
                .left("SOLUTION")
                .right("SOURCES GIVE")
                .right("WORST DROP")
                .left("AT LOAD")
                .right("IMBALANCE");
        for (OperatingState state : states) {
            Optional<Solution> solution = analysis.solution(state.id());
            if (solution.isEmpty()) {
                continue;
            }
            Optional<LoadVolts> worst = solution.get().loads().values().stream()
                    .filter(load -> state.asksOn(load.load()))
                    .max(Comparator.comparingDouble(LoadVolts::onDropVolts));
            table.row(
                    state.name(),
                    solution.get().status().name(),
                    Formats.amps(given(solution.get())),
                    worst.map(load -> Formats.volts(load.onDropVolts())).orElse("-"),
                    worst.map(load -> load.load().value()).orElse("-"),
                    Formats.amps(solution.get().residualAmps()));
        }
        if (!table.isEmpty()) {
            table.print(out);
            out.println();
        }
        for (OperatingState state : states) {
            analysis.solution(state.id()).stream()
                    .flatMap(solution -> solution.islands().stream())
                    .filter(island -> island.powered() && island.status() != IslandStatus.SOLVED)
                    .forEach(island -> out.println("  " + state.name() + ": " + island.sentence()));
        }
    }

    /** Mean current of all sources that give, A. */
    private static double given(Solution solution) {
        return solution.flows().values().stream()
                .filter(flow -> flow.branch().kind() == BranchKind.SOURCE)
                .mapToDouble(BranchFlow::amps)
                .filter(amps -> amps > 0)
                .sum();
    }

    private static void loads(Analysis analysis, OperatingState state, PrintWriter out) {
        Optional<Solution> solution = analysis.solution(state.id());
        if (solution.isEmpty()) {
            return;
        }
        TextTable table = new TextTable()
                .left("LOAD")
                .left("NAME")
                .right("CURRENT")
                .right("VOLTS")
                .right("FEED DROP")
                .right("RETURN DROP")
                .right("IN CONTACTS")
                .right("IN DEVICES")
                .right("DROP")
                .right("LIMIT")
                .right("MEAN CURRENT");
        solution.get().loads().values().stream()
                .filter(load -> state.asksOn(load.load()))
                .sorted(Comparator.comparingDouble((LoadVolts load) -> load.limitVolts() - load.onDropVolts()))
                .forEach(load -> table.row(
                        load.load().value(),
                        analysis.harness().components().get(load.load()).name(),
                        Formats.amps(load.on().amps()),
                        Formats.volts(load.on().volts()),
                        Formats.volts(load.on().feedDropVolts()),
                        Formats.volts(load.on().returnDropVolts()),
                        Formats.volts(load.on().contactDropVolts()),
                        Formats.volts(load.on().deviceDropVolts()),
                        Formats.volts(load.onDropVolts()),
                        Formats.volts(load.limitVolts()),
                        Formats.amps(load.amps())));
        out.println();
        out.println("LOADS IN " + state.name().toUpperCase(Locale.ROOT) + " (in its own on-state; least margin first)");
        if (table.isEmpty()) {
            out.println("  no load is asked on");
        } else {
            table.print(out);
        }
    }

    /** Words for a severity with its count. */
    static String counted(Analysis analysis, Severity severity) {
        long count = analysis.count(severity);
        String word = severity.name().toLowerCase(Locale.ROOT);
        return count + " " + word + (count == 1 ? "" : "s");
    }
}
