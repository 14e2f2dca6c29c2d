package org.ohmloom.solve.charge;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.SequenceId;
import org.ohmloom.model.StateId;
import org.ohmloom.words.Text;

/**
 * A timed sequence of operating states, run with the charge level moving the batteries' voltage and resistance.
 *
 * @param sequence     the sequence
 * @param name         what people call it
 * @param steps        each step as it ran, in order
 * @param batteries    each battery, in id order
 * @param untilVolts   voltage asked about, V, if one is
 * @param totalSeconds how long it is to last, s
 * @param stoppedAt    state whose network had no solution, where the run stopped
 * @param sentences    the result for people
 */
public record SequenceRun(
        SequenceId sequence,
        String name,
        List<StepRun> steps,
        List<BatteryRun> batteries,
        OptionalDouble untilVolts,
        double totalSeconds,
        Optional<StateId> stoppedAt,
        List<Text> sentences) {

    /**
     * One step as it ran.
     *
     * @param state           its state
     * @param startSeconds    when it begins, s from the beginning of the sequence
     * @param durationSeconds how long it lasts, s
     * @param drawnAmpHours   charge the batteries gave in it, Ah; negative when they were charged
     * @param alternatorAmps  current of the alternators at its end, A
     * @param endVolts        lowest voltage of a battery at its end, V
     */
    public record StepRun(
            StateId state,
            double startSeconds,
            double durationSeconds,
            double drawnAmpHours,
            double alternatorAmps,
            double endVolts) {}

    public SequenceRun {
        steps = List.copyOf(steps);
        batteries = List.copyOf(batteries);
        sentences = List.copyOf(sentences);
    }

    /** Charge all batteries gave, Ah. */
    public double drawnAmpHours() {
        return batteries.stream().mapToDouble(BatteryRun::drawnAmpHours).sum();
    }

    /** Minutes until the first battery reaches the voltage asked about; empty when none does. */
    public OptionalDouble untilMinutes() {
        return batteries.stream()
                .flatMapToDouble(battery -> battery.untilMinutes().stream())
                .min();
    }
}
