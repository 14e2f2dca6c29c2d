package org.ohmloom.solve.run;

import java.util.List;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.ComponentId;

/**
 * The current of a protective device while something behind it starts.
 *
 * @param device                  the device
 * @param branch                  its branch
 * @param beforeAmps              current before the start, A
 * @param peakAmps                largest current, A
 * @param endAmps                 current at the end of the run, A
 * @param squareAmpSeconds        integral of its current squared over the run, A2s
 * @param excessSquareAmpSeconds  the same less that of {@code endAmps} flowing all the time: what the start alone adds, A2s;
 *                                for an exponential pulse without a running current 0.5 x peak^2 x time constant
 * @param amps                    current at each instant of the run, A
 */
public record DeviceSurge(
        ComponentId device,
        BranchId branch,
        double beforeAmps,
        double peakAmps,
        double endAmps,
        double squareAmpSeconds,
        double excessSquareAmpSeconds,
        List<Double> amps) {

    public DeviceSurge {
        amps = List.copyOf(amps);
    }
}
