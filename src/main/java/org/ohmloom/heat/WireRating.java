package org.ohmloom.heat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.Citation;
import org.ohmloom.units.Gauge;

/**
 * What a wire is, what it carries at worst and what it may carry.
 *
 * @param wire           the wire
 * @param gauge          size it was solved with: its own, or the smallest that serves when it has none yet
 * @param provisional    whether the size is not the wire's own yet
 * @param areaMm2        copper area of that size, mm2
 * @param lengthMetres   cut length: entered, or its way and the allowances of each end; empty when neither is known
 * @param ohms           end-to-end resistance at its temperature, ohm
 * @param resistance     table row its resistance comes from; empty for a measured one
 * @param worstState     state that lasts with the largest RMS current; empty when there is no state
 * @param worstAmps      that current, A: what heats the conductor and is judged by its ampacity
 * @param peakState      state with the largest RMS current, short ones such as cranking included
 * @param peakAmps       that current, A
 * @param worstDropVolts largest on-state drop along it in any state, V
 * @param worstWatts     largest mean heat in any state, W
 * @param celsius        conductor temperature in the hottest state that lasts, deg C: the physical estimate
 * @param ampacity       what it may carry; empty when no table has its size or insulation
 * @param temperature    how warm it runs by every way of reckoning
 */
public record WireRating(
        Wire wire,
        Gauge gauge,
        boolean provisional,
        double areaMm2,
        OptionalDouble lengthMetres,
        double ohms,
        Optional<Citation> resistance,
        Optional<StateId> worstState,
        double worstAmps,
        Optional<StateId> peakState,
        double peakAmps,
        double worstDropVolts,
        double worstWatts,
        double celsius,
        Optional<Ampacity> ampacity,
        WireTemperature temperature) {

    /** Whether some state too short to heat the conductor brings more current than the worst that lasts. */
    public boolean hasShortPeak() {
        return peakAmps > worstAmps;
    }
}
