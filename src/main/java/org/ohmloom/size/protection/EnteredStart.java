package org.ohmloom.size.protection;

import java.util.Optional;
import org.ohmloom.model.StateId;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * A start as it is entered: a peak that decays exponentially to the running current, I(t) = Ir + (Ip - Ir) exp(-t/T).
 *
 * @param peakAmps     current at the first moment, A
 * @param runningAmps  current it decays to, A, at most the peak
 * @param decaySeconds time constant T, s, more than 0
 */
public record EnteredStart(double peakAmps, double runningAmps, double decaySeconds) implements StartShape {

    private static final double CONSTANTS_TO_SETTLE = 6;

    @Override
    public double secondsAbove(double amps) {
        if (peakAmps <= amps) {
            return 0;
        }
        return runningAmps >= amps
                ? Double.POSITIVE_INFINITY
                : decaySeconds * Math.log((peakAmps - runningAmps) / (amps - runningAmps));
    }

    /**
     * With t1 the time above it, Ir2 t1 + 2 Ir (Ip - Ir) T (1 - x) + (Ip - Ir)2 T/2 (1 - x2), x = exp(-t1/T). From 0 to 0 this
     * is the half of Ip2 T.
     */
    @Override
    public double squareAbove(double amps) {
        double seconds = secondsAbove(amps);
        if (seconds == 0 || Double.isInfinite(seconds)) {
            return seconds;
        }
        double rise = peakAmps - runningAmps;
        double left = Math.exp(-seconds / decaySeconds);
        return runningAmps * runningAmps * seconds
                + 2 * runningAmps * rise * decaySeconds * (1 - left)
                + rise * rise * decaySeconds / 2 * (1 - left * left);
    }

    @Override
    public double ampsAt(double seconds) {
        return runningAmps + (peakAmps - runningAmps) * Math.exp(-seconds / decaySeconds);
    }

    @Override
    public double lastSeconds() {
        return CONSTANTS_TO_SETTLE * decaySeconds;
    }

    @Override
    public Text text() {
        return CheckTexts.text("start.decays", Formats.amps(runningAmps), Formats.seconds(decaySeconds));
    }

    @Override
    public Optional<StateId> state() {
        return Optional.empty();
    }
}
