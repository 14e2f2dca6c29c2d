package org.ohmloom.graph;

import java.util.List;
import org.ohmloom.words.Text;

/**
 * What a battery is in one operating state: its data at its charge level, its temperature and the length of the pulse.
 *
 * @param chargeFraction charge level, 0 to 1
 * @param celsius        temperature, deg C
 * @param pulseSeconds   how long the state draws on it, s; infinite for a state that lasts
 * @param emfVolts       open-circuit voltage, V
 * @param ohms           discharge resistance, ohm
 * @param chargeOhms     charge resistance, ohm
 * @param acceptanceAmps most current it is charged with, A, 0 or more; infinite where nothing is known
 * @param steps          how these were worked out: formula with its numbers, then the table row
 * @param assumptions    what was taken because the state does not say it
 */
public record BatteryCondition(
        double chargeFraction,
        double celsius,
        double pulseSeconds,
        double emfVolts,
        double ohms,
        double chargeOhms,
        double acceptanceAmps,
        List<Text> steps,
        List<Assumption> assumptions) {

    public BatteryCondition {
        steps = List.copyOf(steps);
        assumptions = List.copyOf(assumptions);
    }

    /** How its current and voltage hang together. */
    public Law.VoltageSource law() {
        return Law.VoltageSource.battery(emfVolts, ohms, chargeOhms, acceptanceAmps);
    }
}
