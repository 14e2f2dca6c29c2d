package org.ohmloom.solve.charge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.SolveTexts;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** What became of the batteries in a sequence, in sentences. */
final class SequenceSentences {
    private static final double SECONDS_PER_HOUR = 3600;
    private static final double MINUTES_PER_HOUR = 60;

    private SequenceSentences() {}

    static List<Text> of(
            Harness harness,
            List<BatteryRun> batteries,
            OptionalDouble untilVolts,
            double totalSeconds,
            Optional<StateId> stoppedAt) {
        List<Text> sentences = new ArrayList<>();
        for (BatteryRun battery : batteries) {
            sentences.add(SolveTexts.text(
                    "charge.goes",
                    battery.battery(),
                    Formats.percent(battery.startFraction()),
                    Formats.percent(battery.endFraction()),
                    Formats.number(battery.capacityAmpHours()),
                    BalanceSentences.hours(totalSeconds / SECONDS_PER_HOUR),
                    Formats.number(battery.drawnAmpHours()),
                    Formats.number(battery.chargedAmpHours()),
                    Formats.volts(battery.lowestVolts())));
            untilVolts.ifPresent(until -> sentences.add(until(battery, until, cranks(harness, battery))));
            battery.emptyMinutes()
                    .ifPresent(minutes -> sentences.add(SolveTexts.text(
                            "charge.empty", battery.battery(), BalanceSentences.hours(minutes / MINUTES_PER_HOUR))));
        }
        stoppedAt.ifPresent(state -> sentences.add(
                SolveTexts.text("charge.stops", harness.states().get(state).name())));
        return sentences;
    }

    private static boolean cranks(Harness harness, BatteryRun battery) {
        return battery.samples().stream()
                .anyMatch(sample -> harness.states().get(sample.state()).mode() == EngineMode.CRANKING);
    }

    private static Text until(BatteryRun battery, double untilVolts, boolean cranks) {
        return battery.untilMinutes().isPresent()
                ? SolveTexts.text(
                        "charge.comes-down",
                        battery.battery(),
                        Formats.volts(untilVolts),
                        BalanceSentences.hours(battery.untilMinutes().getAsDouble() / MINUTES_PER_HOUR))
                : SolveTexts.text(
                        cranks ? "charge.stays-above-cranking" : "charge.stays-above",
                        battery.battery(),
                        Formats.volts(untilVolts));
    }
}
