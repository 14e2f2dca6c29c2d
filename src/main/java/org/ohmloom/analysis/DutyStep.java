package org.ohmloom.analysis;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.units.Gauge;

/**
 * A load at one duty, all else as in an operating state.
 *
 * @param load         the load
 * @param output       the output that switches it in words, or the load itself when it takes a command
 * @param state        the operating state all else is taken from
 * @param dutyFraction the duty, more than 0 and at most 1
 * @param loadOnAmps   current of the load while its output is on, A
 * @param loadAmps     mean current of the load, A
 * @param dropVolts    voltage lost on feed and return while the output is on, V
 * @param limitVolts   most voltage it may lose, V
 * @param wires        its own wires, from the protective device on, then those of its return up to the output
 */
public record DutyStep(
        ComponentId load,
        String output,
        StateId state,
        double dutyFraction,
        double loadOnAmps,
        double loadAmps,
        double dropVolts,
        double limitVolts,
        List<OnWire> wires) {

    /**
     * What one wire carries at that duty.
     *
     * @param wire      the wire
     * @param gauge     its size, or the smallest that serves when it has none yet
     * @param onAmps    largest current, A
     * @param rmsAmps   root mean square of its current, A
     * @param meanAmps  mean of its current, A
     * @param dropVolts voltage along it at the largest current, V
     * @param celsius   conductor temperature, deg C
     * @param choice    the size this operation asks for, and why; empty for a wire that is not chosen
     */
    public record OnWire(
            WireId wire,
            Gauge gauge,
            double onAmps,
            double rmsAmps,
            double meanAmps,
            double dropVolts,
            double celsius,
            Optional<ConductorChoice> choice) {}

    public DutyStep {
        wires = List.copyOf(wires);
    }
}
