package org.ohmloom.size.protection;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.tables.ShortTimeLimit;

/**
 * A time-current band against the limit of a conductor.
 *
 * <p>At the largest current the device may carry for ever the conductor must settle within its continuous limit. Above,
 * each row's longest time holds up to the next row, so the current just below the next row is the worst of each stretch.
 * Beyond the last row a fuse lets through no more I2t than at that row (IEC 60364-4-43, clause 434.5.2, compares I2t with
 * k2 S2), so the row's own current decides there.
 *
 * @param foreverAmps   the largest current the device may carry for ever, A
 * @param steadyCelsius conductor temperature at it, deg C; infinite when it does not settle
 * @param settles       whether that is within the continuous limit
 * @param weakest       the stretch where the conductor has least time to spare; empty without any row
 * @param survives      whether the device opens in time in every stretch
 * @param withstands    whether it withstands, at the current of each row, what is over within the seconds of a short circuit
 */
public record BandAgainstConductor(
        double foreverAmps,
        double steadyCelsius,
        boolean settles,
        Optional<Stretch> weakest,
        boolean survives,
        boolean withstands) {

    private static final double SAME = 1e-9;

    /**
     * The worst current of one stretch of the band.
     *
     * @param amps          the current at its upper end, A
     * @param openSeconds   by when the device has opened there, s
     * @param damageSeconds time the conductor stands there, s; empty for good
     * @param endCelsius    conductor temperature when the device opens, deg C; infinite when it runs away
     */
    public record Stretch(double amps, double openSeconds, OptionalDouble damageSeconds, double endCelsius) {
        /** Whether the device opens in time. */
        public boolean inTime() {
            return damageSeconds.isEmpty() || openSeconds <= damageSeconds.getAsDouble() * (1 + SAME);
        }

        /** Time the device takes over the time the conductor stands. */
        double useRatio() {
            return damageSeconds.isEmpty() ? 0 : openSeconds / damageSeconds.getAsDouble();
        }
    }

    /**
     * Compares them.
     *
     * @param band        the band of the device
     * @param limit       the conductor
     * @param largestAmps the largest current that can flow, A; positive infinity when it is not known
     * @param extraAmps   what sources that limit themselves feed into the conductor past the device, A, 0 or more
     */
    public static BandAgainstConductor of(
            TimeCurrentBand band, ConductorLimit limit, double largestAmps, double extraAmps) {
        double forever = Math.min(band.foreverAmps() + extraAmps, largestAmps);
        double steady = limit.heating().steadyCelsius(forever);
        Optional<Stretch> weakest = Optional.empty();
        boolean withstands = true;
        for (int k = 0; k < band.steps().size(); k++) {
            BandStep step = band.steps().get(k);
            if (step.maximumSeconds().isEmpty() || step.amps() > largestAmps) {
                continue;
            }
            double next = k + 1 < band.steps().size() ? band.steps().get(k + 1).amps() : step.amps();
            double amps = Math.min(next + extraAmps, largestAmps);
            double seconds = band.opensWithinSeconds(step.amps()).orElseThrow();
            Stretch stretch = new Stretch(amps, seconds, limit.damageSeconds(amps), limit.celsiusAfter(amps, seconds));
            withstands &= seconds > ShortTimeLimit.SHORT_CIRCUIT_SECONDS
                    || seconds <= limit.damageSeconds(step.amps()).orElse(Double.POSITIVE_INFINITY) * (1 + SAME);
            if (weakest.isEmpty() || stretch.useRatio() > weakest.get().useRatio()) {
                weakest = Optional.of(stretch);
            }
        }
        return new BandAgainstConductor(
                forever,
                steady,
                steady <= limit.continuousCelsius() * (1 + SAME) + SAME,
                weakest,
                weakest.map(Stretch::inTime).orElse(true),
                withstands);
    }

    /** A conductor against a source that limits itself to a current, A, for good. */
    public static BandAgainstConductor steady(ConductorLimit limit, double amps) {
        double steady = limit.heating().steadyCelsius(amps);
        return new BandAgainstConductor(
                amps, steady, steady <= limit.continuousCelsius() * (1 + SAME) + SAME, Optional.empty(), true, true);
    }

    /** Whether this leaves the conductor worse off than another does. */
    boolean isWorseThan(BandAgainstConductor other) {
        if (isProtected() != other.isProtected()) {
            return !isProtected();
        }
        return steadyCelsius > other.steadyCelsius;
    }

    /** Whether the conductor is protected. */
    public boolean isProtected() {
        return settles && survives;
    }
}
