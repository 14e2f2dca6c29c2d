package org.ohmloom.solve.run;

import java.util.List;
import org.ohmloom.model.ComponentId;
import org.ohmloom.words.Text;

/**
 * What a starting load or control unit draws.
 *
 * @param id                  the load or control unit
 * @param manner              how it starts
 * @param method              the formula with its numbers
 * @param timeConstantSeconds time constant by its own numbers, s
 * @param peakAmps            largest current, A
 * @param endAmps             current at the end of the run, A
 * @param lowestVolts         least voltage at its terminals, V
 * @param settleSeconds       when its current had come within 5 % of peak - end of its end, s
 * @param amps                current at each instant, A
 * @param volts               voltage at its terminals at each instant, V
 */
public record StarterTrace(
        ComponentId id,
        Manner manner,
        Text method,
        double timeConstantSeconds,
        double peakAmps,
        double endAmps,
        double lowestVolts,
        double settleSeconds,
        List<Double> amps,
        List<Double> volts) {

    public StarterTrace {
        amps = List.copyOf(amps);
        volts = List.copyOf(volts);
    }
}
