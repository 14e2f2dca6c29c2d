package org.ohmloom.analysis;

import java.util.Locale;
import java.util.function.BiConsumer;
import org.ohmloom.model.Harness;
import org.ohmloom.solve.charge.AlternatorBalance;
import org.ohmloom.solve.charge.BatteryBalance;
import org.ohmloom.solve.charge.ChargeStudy;
import org.ohmloom.solve.charge.LoadTabulation;
import org.ohmloom.solve.charge.SequenceRun;
import org.ohmloom.solve.charge.StateCharge;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** Writes down how batteries and alternators fare, with the formulas and table rows behind it. */
final class ChargeLog {

    private ChargeLog() {}

    /** Adds lines as depth and text. */
    static void write(Harness harness, ChargeStudy study, BiConsumer<Integer, String> log) {
        if (study.states().values().stream()
                .allMatch(charge ->
                        charge.batteries().isEmpty() && charge.alternators().isEmpty())) {
            return;
        }
        log.accept(0, "Batteries and alternators, by the means over a period");
        for (StateCharge charge : study.states().values()) {
            log.accept(1, harness.states().get(charge.state()).name());
            charge.sentences().forEach(sentence -> log.accept(2, sentence.english()));
            charge.alternators().forEach(each -> alternator(each, log));
            charge.batteries().forEach(each -> battery(each, log));
            tabulation(study.tabulations().get(charge.state()), log);
        }
        study.sequences().forEach(run -> sequence(harness, run, log));
    }

    private static void alternator(AlternatorBalance each, BiConsumer<Integer, String> log) {
        each.steps().forEach(step -> log.accept(3, each.alternator() + " " + step));
        log.accept(
                3,
                String.format(
                        Locale.ROOT,
                        "%s %s: regulates, gives its limit or gives nothing, missed by %.2g V",
                        each.alternator(),
                        each.mode().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                        each.residualVolts()));
    }

    private static void battery(BatteryBalance each, BiConsumer<Integer, String> log) {
        Text.english(each.steps()).forEach(step -> {
            if (step.startsWith("  ")) {
                log.accept(4, step.strip());
            } else {
                log.accept(3, each.battery() + " " + step);
            }
        });
        if (each.enduranceHours().isPresent()) {
            log.accept(
                    3,
                    String.format(
                            Locale.ROOT,
                            "%s lasts %.3g h by charge level x H (C / (I H))^k, %.3g h by ampere hours alone",
                            each.battery(),
                            each.enduranceHours().getAsDouble(),
                            each.plainHours().orElse(0)));
        }
    }

    private static void tabulation(LoadTabulation table, BiConsumer<Integer, String> log) {
        if (table.limitAmps() > 0) {
            log.accept(
                    2,
                    "Continuous loads " + Formats.amps(table.continuousAmps()) + " of "
                            + Formats.amps(table.limitAmps())
                            + ", " + Formats.percent(table.shareFraction()) + "; 80 % is "
                            + Formats.amps(table.allowedAmps()));
            log.accept(3, LoadTabulation.LARGEST_SHARE_SOURCE);
        }
    }

    private static void sequence(Harness harness, SequenceRun run, BiConsumer<Integer, String> log) {
        log.accept(
                1,
                "Sequence " + run.name() + ": charge in plain ampere hours, by the mean current between two instants");
        run.sentences().forEach(sentence -> log.accept(2, sentence.english()));
        for (SequenceRun.StepRun step : run.steps()) {
            log.accept(
                    3,
                    harness.states().get(step.state()).name() + " for " + Formats.seconds(step.durationSeconds())
                            + ": batteries give " + Formats.number(step.drawnAmpHours()) + " Ah and end at "
                            + Formats.volts(step.endVolts()));
        }
    }
}
