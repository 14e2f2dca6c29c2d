package org.ohmloom.solve.charge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.StateId;
import org.ohmloom.units.Formats;

/** What became of the batteries in a sequence, in sentences. */
final class SequenceSentences {
    private static final double SECONDS_PER_HOUR = 3600;
    private static final double MINUTES_PER_HOUR = 60;

    private SequenceSentences() {}

    static List<String> of(
            Harness harness,
            List<BatteryRun> batteries,
            OptionalDouble untilVolts,
            double totalSeconds,
            Optional<StateId> stoppedAt) {
        List<String> sentences = new ArrayList<>();
        for (BatteryRun battery : batteries) {
            sentences.add(battery.battery() + " goes from " + Formats.percent(battery.startFraction()) + " to "
                    + Formats.percent(battery.endFraction()) + " of " + Formats.number(battery.capacityAmpHours())
                    + " Ah in " + BalanceSentences.hours(totalSeconds / SECONDS_PER_HOUR) + ": gives "
                    + Formats.number(battery.drawnAmpHours()) + " Ah, takes "
                    + Formats.number(battery.chargedAmpHours()) + " Ah; lowest voltage "
                    + Formats.volts(battery.lowestVolts()) + ".");
            untilVolts.ifPresent(until -> sentences.add(until(battery, until, cranks(harness, battery))));
            battery.emptyMinutes()
                    .ifPresent(minutes -> sentences.add(battery.battery() + " is empty after "
                            + BalanceSentences.hours(minutes / MINUTES_PER_HOUR) + "."));
        }
        stoppedAt.ifPresent(state -> sentences.add(
                "The run stops in '" + harness.states().get(state).name() + "': its network has no solution."));
        return sentences;
    }

    private static boolean cranks(Harness harness, BatteryRun battery) {
        return battery.samples().stream()
                .anyMatch(sample -> harness.states().get(sample.state()).mode() == EngineMode.CRANKING);
    }

    private static String until(BatteryRun battery, double untilVolts, boolean cranks) {
        return battery.untilMinutes().isPresent()
                ? battery.battery() + " comes down to " + Formats.volts(untilVolts) + " after "
                        + BalanceSentences.hours(battery.untilMinutes().getAsDouble() / MINUTES_PER_HOUR) + "."
                : battery.battery() + " stays above " + Formats.volts(untilVolts)
                        + (cranks ? ", cranking left out." : ".");
    }
}
