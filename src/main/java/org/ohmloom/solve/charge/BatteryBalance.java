package org.ohmloom.solve.charge;

import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.model.ComponentId;
import org.ohmloom.words.Text;

/**
 * What a battery does in a state.
 *
 * @param battery        the battery
 * @param amps           mean current it gives, A; negative while it is charged. As many Ah in every hour
 * @param volts          mean voltage at its terminals, V
 * @param emfVolts       open-circuit voltage at its charge level, V
 * @param ohms           discharge resistance in this state, ohm
 * @param acceptanceAmps most current it is charged with, A; infinite where nothing is known
 * @param chargeFraction charge level, 0 to 1
 * @param celsius        temperature, deg C
 * @param enduranceHours hours until it is empty at this steady current by Peukert's law; empty while it is charged
 * @param plainHours     the same by ampere hours alone; empty while it is charged
 * @param steps          how these were worked out, with table rows
 */
public record BatteryBalance(
        ComponentId battery,
        double amps,
        double volts,
        double emfVolts,
        double ohms,
        double acceptanceAmps,
        double chargeFraction,
        double celsius,
        OptionalDouble enduranceHours,
        OptionalDouble plainHours,
        List<Text> steps) {

    /** Currents below this count as none, A: less than a lamp that shows that something is on. */
    public static final double NOTHING_AMPS = 0.05;

    public BatteryBalance {
        steps = List.copyOf(steps);
    }

    /** Whether it gives current worth the name. */
    public boolean discharges() {
        return amps > NOTHING_AMPS;
    }

    /** Whether it takes current worth the name. */
    public boolean charges() {
        return amps < -NOTHING_AMPS;
    }
}
