package org.ohmloom.heat;

import java.util.List;
import org.ohmloom.heat.balance.HeatBalance;
import org.ohmloom.heat.balance.OpenAir;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.heat.balance.Transient;
import org.ohmloom.units.Formats;

/**
 * Wires on their way from one temperature to another: short states, slow cycles, overload.
 *
 * <p>The transient is that of the wire alone, in air so warm that its running current keeps it at its running temperature:
 * what its neighbours add to it stays while it warms. Safe for any number of threads.
 */
public final class PassingHeat {

    /** A current below this heats nothing, A. */
    private static final double LEAST_AMPS = 1e-3;

    private static final double HOTTEST_AIR_CELSIUS = 400;

    /** A current that is more by less than this share is the same: rounding warms nothing. */
    private static final double MORE_RATIO = 1 + 1e-9;

    private final Ampacities ampacities;

    /** Transients with the dimensions those ampacities use. */
    public PassingHeat(Ampacities ampacities) {
        this.ampacities = ampacities;
    }

    /** The transient of a wire that runs at a temperature with a current, A; for one thread. */
    public Transient from(RoundWire wire, WireHeat running, double runningAmps) {
        double own = 0;
        if (Math.abs(runningAmps) > LEAST_AMPS) {
            OpenAir air = ampacities.air(running.ambientCelsius());
            own = HeatBalance.bare(wire, air).at(runningAmps).celsius() - running.ambientCelsius();
        }
        double warm = Math.max(running.ambientCelsius(), running.celsius() - own);
        return new Transient(HeatBalance.bare(wire, ampacities.air(Math.min(HOTTEST_AIR_CELSIUS, warm))));
    }

    /**
     * Where a wire is at the end of a state too short to heat it through.
     *
     * @param wire        its dimensions
     * @param running     where it runs before
     * @param runningAmps current it runs with before, A
     * @param rmsAmps     current in the short state, A
     * @param seconds     how long the state lasts
     */
    public WireHeat after(RoundWire wire, WireHeat running, double runningAmps, double rmsAmps, double seconds) {
        if (Math.abs(rmsAmps) <= Math.abs(runningAmps) * MORE_RATIO) {
            return running;
        }
        double celsius = from(wire, running, runningAmps).celsiusAfter(running.celsius(), Math.abs(rmsAmps), seconds);
        return new WireHeat(
                celsius,
                running.surfaceCelsius(),
                running.ambientCelsius(),
                HeatTexts.text(
                        "place.after", running.where(), Formats.seconds(seconds), Formats.celsius(running.celsius())),
                celsius >= RoundWire.MELTING_CELSIUS);
    }

    /** Time constant of a wire where it runs, s. */
    public double timeConstantSeconds(RoundWire wire, WireHeat running, double runningAmps) {
        return from(wire, running, runningAmps).timeConstantSeconds(running.celsius());
    }

    /**
     * By how much a slow cycle's hottest moment lies above the temperature its mean square brings, K, 0 or more.
     *
     * @param wire      its dimensions
     * @param settled   where the mean square of the current brings it
     * @param rmsAmps   the root of that mean square, A
     * @param stretches stretches of one period in order
     */
    public double peakAboveKelvin(RoundWire wire, WireHeat settled, double rmsAmps, List<Transient.Stretch> stretches) {
        Transient moving = from(wire, settled, rmsAmps);
        return Math.max(0, moving.peakCelsius(stretches, settled.celsius()) - settled.celsius());
    }
}
