package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.List;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.charge.ChargeStudy;
import org.ohmloom.solve.charge.LoadTabulation;
import org.ohmloom.solve.charge.SequenceRun;
import org.ohmloom.solve.charge.StateCharge;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** Charge balance of states, timed sequences and load analysis as text. */
final class ChargeText {

    private static final int WIDTH = 120;
    private static final int INDENT = 4;

    private ChargeText() {}

    static void print(Analysis analysis, List<OperatingState> states, PrintWriter out) {
        ChargeStudy study = analysis.evidence().charge();
        balances(study, states, out);
        tabulations(study, states, out);
        List<StateId> asked = states.stream().map(OperatingState::id).toList();
        study.sequences().stream()
                .filter(run -> passes(run, asked))
                .forEach(run -> sequence(analysis.harness(), run, out));
    }

    /** Whether a sequence comes through nothing but these states. */
    static boolean passes(SequenceRun run, List<StateId> states) {
        return run.steps().stream().allMatch(step -> states.contains(step.state()));
    }

    private static void balances(ChargeStudy study, List<OperatingState> states, PrintWriter out) {
        boolean any = false;
        for (OperatingState state : states) {
            StateCharge charge = study.states().get(state.id());
            if (charge == null || charge.sentences().isEmpty()) {
                continue;
            }
            if (!any) {
                out.println();
                out.println("BATTERIES AND ALTERNATORS (means over a period)");
                any = true;
            }
            out.println(Wrap.indented(
                    state.name() + ": " + Text.joined(" ", charge.sentences()).english(), 2, WIDTH));
        }
    }

    private static void tabulations(ChargeStudy study, List<OperatingState> states, PrintWriter out) {
        TextTable table = new TextTable()
                .left("OPERATING STATE")
                .right("CONTINUOUS")
                .right("5 S")
                .right("5 MIN")
                .right("30 MIN")
                .right("A + B")
                .right("ALTERNATORS")
                .right("SHARE")
                .right("80 % IS");
        for (OperatingState state : states) {
            LoadTabulation each = study.tabulations().get(state.id());
            if (each != null && !each.lines().isEmpty()) {
                boolean turns = each.limitAmps() > 0;
                table.row(
                        state.name(),
                        Formats.amps(each.continuousAmps()),
                        Formats.amps(each.fiveSecondAmps()),
                        Formats.amps(each.fiveMinuteAmps()),
                        Formats.amps(each.halfHourAmps()),
                        Formats.amps(each.twoColumnAmps()),
                        turns ? Formats.amps(each.limitAmps()) : "-",
                        turns ? Formats.percent(each.shareFraction()) : "-",
                        turns ? Formats.amps(each.allowedAmps()) : "-");
            }
        }
        if (!table.isEmpty()) {
            out.println();
            out.println(
                    "LOAD ANALYSIS (largest means over 5 s, 5 min, 30 min; A + B: loads that always run + the greater of"
                            + " 10 % of the intermittent ones and the largest of them)");
            table.print(out);
        }
    }

    private static void sequence(Harness harness, SequenceRun run, PrintWriter out) {
        out.println();
        out.println("SEQUENCE " + run.name());
        TextTable table = new TextTable()
                .left("STATE")
                .right("BEGINS")
                .right("LASTS")
                .right("BATTERIES GIVE")
                .right("ALTERNATORS AT END")
                .right("VOLTS AT END");
        for (SequenceRun.StepRun step : run.steps()) {
            table.row(
                    harness.states().get(step.state()).name(),
                    Formats.seconds(step.startSeconds()),
                    Formats.seconds(step.durationSeconds()),
                    Formats.number(step.drawnAmpHours()) + " Ah",
                    Formats.amps(step.alternatorAmps()),
                    Formats.volts(step.endVolts()));
        }
        if (!table.isEmpty()) {
            table.print(out);
        }
        run.sentences().forEach(sentence -> out.println(Wrap.indented(sentence.english(), INDENT, WIDTH)));
    }
}
