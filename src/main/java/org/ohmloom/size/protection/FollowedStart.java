package org.ohmloom.size.protection;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.StateId;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * A start as it was followed over time in the whole network, with the sag of the supply and all else the device carries in that
 * state; straight between the instants, within 1 % of the peak. What flows at the end flows on.
 *
 * @param followed     the operating state
 * @param seconds      instants from 0 up, s, at least two
 * @param amps         current at each, A, 0 or more
 * @param decaySeconds time constant by the load's own numbers, s
 */
public record FollowedStart(StateId followed, List<Double> seconds, List<Double> amps, double decaySeconds)
        implements StartShape {

    public FollowedStart {
        seconds = List.copyOf(seconds);
        amps = List.copyOf(amps);
    }

    @Override
    public double peakAmps() {
        return amps.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }

    @Override
    public double runningAmps() {
        return amps.get(amps.size() - 1);
    }

    @Override
    public double secondsAbove(double limit) {
        return above(limit, (from, to) -> 1);
    }

    /** Between two instants the mean square of a straight line, (a2 + ab + b2)/3. */
    @Override
    public double squareAbove(double limit) {
        return above(limit, (from, to) -> (from * from + from * to + to * to) / 3);
    }

    /** The mean of something over a straight piece of the current from one value to another, A. */
    private interface Mean {
        double of(double from, double to);
    }

    private double above(double limit, Mean mean) {
        if (runningAmps() > limit) {
            return Double.POSITIVE_INFINITY;
        }
        double sum = 0;
        for (int k = 1; k < amps.size(); k++) {
            double from = amps.get(k - 1);
            double to = amps.get(k);
            double step = seconds.get(k) - seconds.get(k - 1);
            if (from > limit && to > limit) {
                sum += step * mean.of(from, to);
            } else if (from > limit || to > limit) {
                double share = (Math.max(from, to) - limit) / Math.abs(to - from);
                sum += step * share * mean.of(Math.max(from, to), limit);
            }
        }
        return sum;
    }

    @Override
    public double ampsAt(double at) {
        for (int k = 1; k < seconds.size(); k++) {
            if (at <= seconds.get(k)) {
                double share = (at - seconds.get(k - 1)) / (seconds.get(k) - seconds.get(k - 1));
                return amps.get(k - 1) + share * (amps.get(k) - amps.get(k - 1));
            }
        }
        return runningAmps();
    }

    @Override
    public double lastSeconds() {
        return seconds.get(seconds.size() - 1);
    }

    @Override
    public Text text() {
        return CheckTexts.text("start.followed", Formats.amps(runningAmps()), followed);
    }

    @Override
    public Optional<StateId> state() {
        return Optional.of(followed);
    }
}
