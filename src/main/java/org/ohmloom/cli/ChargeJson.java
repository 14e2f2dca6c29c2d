package org.ohmloom.cli;

import java.util.List;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.charge.AlternatorBalance;
import org.ohmloom.solve.charge.BatteryBalance;
import org.ohmloom.solve.charge.BatteryRun;
import org.ohmloom.solve.charge.ChargeStudy;
import org.ohmloom.solve.charge.LoadLine;
import org.ohmloom.solve.charge.LoadTabulation;
import org.ohmloom.solve.charge.SequenceRun;
import org.ohmloom.solve.charge.StateCharge;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.words.Text;

/** Charge balance of states, timed sequences and load analysis as JSON. */
final class ChargeJson {

    private ChargeJson() {}

    /** Adds the keys {@code charge}, {@code loadAnalysis} and {@code sequences} for the states asked for. */
    static void write(Analysis analysis, List<OperatingState> states, JsonObjectWriter root) {
        ChargeStudy study = analysis.evidence().charge();
        List<StateId> asked = states.stream().map(OperatingState::id).toList();
        root.array("charge", array -> study.states().values().stream()
                .filter(each -> asked.contains(each.state()))
                .forEach(each -> array.object(item -> state(item, analysis, each))));
        root.array("loadAnalysis", array -> study.tabulations().values().stream()
                .filter(each -> asked.contains(each.state()))
                .forEach(each -> array.object(item -> tabulation(item, analysis, each))));
        root.array("sequences", array -> study.sequences().stream()
                .filter(each -> ChargeText.passes(each, asked))
                .forEach(each -> array.object(item -> sequence(item, analysis, each))));
    }

    private static String name(Analysis analysis, StateId id) {
        return analysis.harness().states().get(id).name();
    }

    private static void state(JsonObjectWriter item, Analysis analysis, StateCharge charge) {
        item.put("state", name(analysis, charge.state()));
        item.array("alternators", array -> charge.alternators()
                .forEach(each -> array.object(entry -> alternator(entry, each))));
        item.array(
                "batteries", array -> charge.batteries().forEach(each -> array.object(entry -> battery(entry, each))));
        item.texts("sentences", Text.english(charge.sentences()));
    }

    private static void alternator(JsonObjectWriter entry, AlternatorBalance each) {
        entry.put("id", each.alternator().value());
        entry.put("mode", each.mode().name());
        entry.put("amps", each.amps());
        entry.put("limitAmps", each.limitAmps());
        entry.put("setPointVolts", each.setPointVolts());
        entry.put("sense", each.sense());
        entry.put("senseVolts", each.senseVolts());
        entry.put("residualVolts", each.residualVolts());
        entry.texts("steps", Text.english(each.steps()));
    }

    private static void battery(JsonObjectWriter entry, BatteryBalance each) {
        entry.put("id", each.battery().value());
        entry.put("amps", each.amps());
        entry.put("ampHoursPerHour", each.amps());
        entry.put("volts", each.volts());
        entry.put("emfVolts", each.emfVolts());
        entry.put("ohms", each.ohms());
        entry.put("chargeFraction", each.chargeFraction());
        entry.put("celsius", each.celsius());
        entry.put("enduranceHours", each.enduranceHours());
        entry.put("plainHours", each.plainHours());
        if (Double.isInfinite(each.acceptanceAmps())) {
            entry.putNull("acceptanceAmps");
        } else {
            entry.put("acceptanceAmps", each.acceptanceAmps());
        }
        entry.texts("steps", Text.english(each.steps()));
    }

    private static void tabulation(JsonObjectWriter item, Analysis analysis, LoadTabulation table) {
        item.put("state", name(analysis, table.state()));
        item.put("continuousAmps", table.continuousAmps());
        item.put("fiveSecondAmps", table.fiveSecondAmps());
        item.put("fiveMinuteAmps", table.fiveMinuteAmps());
        item.put("halfHourAmps", table.halfHourAmps());
        item.put("columnAAmps", table.columnAAmps());
        item.put("columnBAmps", table.columnBAmps());
        item.put("twoColumnAmps", table.twoColumnAmps());
        item.put("alternatorLimitAmps", table.limitAmps());
        item.put("allowedAmps", table.allowedAmps());
        item.put("shareFraction", table.shareFraction());
        item.put("source", LoadTabulation.LARGEST_SHARE_SOURCE);
        item.array("loads", array -> table.lines().forEach(line -> array.object(entry -> line(entry, line))));
    }

    private static void line(JsonObjectWriter entry, LoadLine line) {
        entry.put("id", line.component().value());
        entry.put("intermittent", line.intermittent());
        entry.put("amps", line.amps());
        entry.put("onAmps", line.onAmps());
        entry.put("fiveSecondAmps", line.fiveSecondAmps());
        entry.put("fiveMinuteAmps", line.fiveMinuteAmps());
        entry.put("halfHourAmps", line.halfHourAmps());
    }

    private static void sequence(JsonObjectWriter item, Analysis analysis, SequenceRun run) {
        item.put("id", run.sequence().value());
        item.put("name", run.name());
        item.put("totalSeconds", run.totalSeconds());
        item.put("untilVolts", run.untilVolts());
        item.put("untilMinutes", run.untilMinutes());
        item.put("stoppedAt", run.stoppedAt().map(id -> name(analysis, id)));
        item.array("steps", array -> run.steps()
                .forEach(step -> array.object(entry -> {
                    entry.put("state", name(analysis, step.state()));
                    entry.put("startSeconds", step.startSeconds());
                    entry.put("durationSeconds", step.durationSeconds());
                    entry.put("drawnAmpHours", step.drawnAmpHours());
                    entry.put("alternatorAmps", step.alternatorAmps());
                    entry.put("endVolts", step.endVolts());
                })));
        item.array("batteries", array -> run.batteries().forEach(each -> array.object(entry -> battery(entry, each))));
        item.texts("sentences", Text.english(run.sentences()));
    }

    private static void battery(JsonObjectWriter entry, BatteryRun run) {
        entry.put("id", run.battery().value());
        entry.put("startChargeFraction", run.startFraction());
        entry.put("endChargeFraction", run.endFraction());
        entry.put("drawnAmpHours", run.drawnAmpHours());
        entry.put("chargedAmpHours", run.chargedAmpHours());
        entry.put("lowestVolts", run.lowestVolts());
        entry.put("untilMinutes", run.untilMinutes());
        entry.put("emptyMinutes", run.emptyMinutes());
        entry.array("samples", array -> run.samples()
                .forEach(sample -> array.object(point -> {
                    point.put("seconds", sample.seconds());
                    point.put("state", sample.state().value());
                    point.put("amps", sample.amps());
                    point.put("volts", sample.volts());
                    point.put("chargeFraction", sample.chargeFraction());
                })));
    }
}
