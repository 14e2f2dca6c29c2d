package org.ohmloom.solve.charge;

import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.model.ComponentId;

/**
 * A battery through a sequence of states.
 *
 * @param battery          the battery
 * @param capacityAmpHours its rated capacity, Ah
 * @param startFraction    charge level at the beginning, 0 to 1
 * @param endFraction      charge level at the end, 0 to 1
 * @param drawnAmpHours    charge taken out of it, Ah
 * @param chargedAmpHours  charge put into it, Ah, losses of charging included
 * @param lowestVolts      lowest voltage at its terminals, V, cranking included
 * @param untilMinutes     minutes until the voltage asked about is reached, cranking left out; empty when it is not, or
 *                         none is asked about
 * @param emptyMinutes     minutes until it is empty; empty when it is not
 * @param samples          the battery over time, in order
 */
public record BatteryRun(
        ComponentId battery,
        double capacityAmpHours,
        double startFraction,
        double endFraction,
        double drawnAmpHours,
        double chargedAmpHours,
        double lowestVolts,
        OptionalDouble untilMinutes,
        OptionalDouble emptyMinutes,
        List<ChargeSample> samples) {

    public BatteryRun {
        samples = List.copyOf(samples);
    }
}
