package org.ohmloom.solve.charge;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.StateId;
import org.ohmloom.words.Text;

/**
 * The charge balance of one operating state.
 *
 * @param state       the state
 * @param alternators its alternators that are on, in id order
 * @param batteries   its batteries that are connected and have a solution, in id order
 * @param sentences   the balance for people, one sentence for each source
 */
public record StateCharge(
        StateId state, List<AlternatorBalance> alternators, List<BatteryBalance> batteries, List<Text> sentences) {

    public StateCharge {
        alternators = List.copyOf(alternators);
        batteries = List.copyOf(batteries);
        sentences = List.copyOf(sentences);
    }

    /** Current the batteries give together, A; those that are charged not counted. */
    public double dischargeAmps() {
        return batteries.stream()
                .filter(BatteryBalance::discharges)
                .mapToDouble(BatteryBalance::amps)
                .sum();
    }

    /** Current the alternators could give together, A. */
    public double limitAmps() {
        return alternators.stream().mapToDouble(AlternatorBalance::limitAmps).sum();
    }

    /** Whether an alternator turns that can give something. */
    public boolean hasAlternator() {
        return limitAmps() > 0;
    }

    /** Whether an alternator gives all it can. */
    public boolean isOverloaded() {
        return alternators.stream().anyMatch(each -> each.mode() == AlternatorBalance.Mode.AT_LIMIT);
    }

    /** The battery that gives the most, if one gives. */
    public Optional<BatteryBalance> mostDischarged() {
        return batteries.stream()
                .filter(BatteryBalance::discharges)
                .max(Comparator.comparingDouble(BatteryBalance::amps));
    }
}
