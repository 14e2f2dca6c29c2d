package org.ohmloom.solve.run;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.ohmloom.solve.WarmNetwork;
import org.ohmloom.words.Text;

/**
 * Follows a start over time, step by step, each instant solved as a whole network.
 *
 * <p>The states go by the third-order method with an embedded second-order one of Bogacki and Shampine (Applied Mathematics
 * Letters 2, 1989); where nothing has a state, only the time goes on. A step is taken when the two orders agree to {@link
 * #STATE_ERROR_SHARE} of the state, and when every value read in its middle, at the state a cubic through both ends has
 * there, lies within {@link #LINE_ERROR_SHARE} of the straight line between its ends. The length of the next one follows
 * from both errors.
 */
final class Stepper {

    static final double STATE_ERROR_SHARE = 2e-4;
    static final double LINE_ERROR_SHARE = 0.005;

    /** What is left of a start when it counts as over, as a share. */
    static final double REST_SHARE = 0.01;

    private static final int MOST_STEPS = 400;
    private static final double MOST_CONSTANTS = 15;
    private static final double FIRST_STEP_SHARE = 0.02;
    private static final double LEAST_STEP_SHARE = 1e-9;
    private static final double SAFETY = 0.9;
    private static final double MOST_GROWTH = 4;
    private static final double MOST_CUT = 0.2;

    private final WarmNetwork network;
    private final OutputLimits limits;
    private final List<Moving> moving;
    private final double[] constantsSeconds;
    private final int starters;
    private final Supplier<double[]> reading;
    private final double[] sizes;
    private final boolean states;

    /**
     * A run to come.
     *
     * @param network  the network, everything else in it at rest
     * @param limits   its outputs with a limit
     * @param moving   what moves: first what starts, then what answers
     * @param constantsSeconds time constant of each that starts, s
     * @param reading  reads the values of the network as it was last solved
     * @param sizes    size of each value
     */
    Stepper(
            WarmNetwork network,
            OutputLimits limits,
            List<Moving> moving,
            double[] constantsSeconds,
            Supplier<double[]> reading,
            double[] sizes) {
        this.network = network;
        this.limits = limits;
        this.moving = moving;
        this.constantsSeconds = constantsSeconds;
        this.starters = constantsSeconds.length;
        this.reading = reading;
        this.sizes = sizes;
        this.states = moving.stream().anyMatch(Moving::hasState);
    }

    /** One solved instant: the states with their change per second, the values read, and what is left of each start. */
    private static final class Instant {
        private final double seconds;
        private final double[] state;
        private final double[] rates;
        private final double[] values;
        private final double[] unrests;

        Instant(double seconds, double[] state, double[] rates, double[] values, double[] unrests) {
            this.seconds = seconds;
            this.state = state;
            this.rates = rates;
            this.values = values;
            this.unrests = unrests;
        }

        /** What is left of the slowest of so many starts. */
        double unrest(int starters) {
            return Arrays.stream(unrests, 0, starters).max().orElseThrow();
        }
    }

    /** How a run ended, with what was recorded up to there. */
    record End(StartUp.Outcome outcome, Optional<Text> failure, Recording recording) {}

    /** A network that has no solution at an instant. */
    private static final class Collapse extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final transient Text why;

        Collapse(Text why) {
            super(why.english(), null, false, false);
            this.why = why;
        }
    }

    /**
     * Runs from 0 s with the given states.
     *
     * @param start a state for each thing that moves
     * @param first the values at 0 s, already solved
     */
    End run(double[] start, double[] first) {
        Recording recording = new Recording(first);
        try {
            return new End(go(start, recording), Optional.empty(), recording);
        } catch (Collapse collapse) {
            return new End(StartUp.Outcome.NO_OPERATING_POINT, Optional.of(collapse.why), recording);
        }
    }

    private StartUp.Outcome go(double[] start, Recording recording) {
        Instant now = at(0, start);
        double shortest = Arrays.stream(constantsSeconds).min().orElseThrow();
        double longest = MOST_CONSTANTS * Arrays.stream(constantsSeconds).max().orElseThrow();
        double step = FIRST_STEP_SHARE * shortest;
        for (int steps = 0; steps < MOST_STEPS && now.seconds < longest; steps++) {
            if (now.unrest(starters) < REST_SHARE) {
                return outcome(now);
            }
            Tried tried = tried(now, step);
            while (tried.ratio() > 1 && step > LEAST_STEP_SHARE * shortest) {
                step *= change(tried);
                tried = tried(now, step);
            }
            Instant end = tried.end();
            recording.add(tried.middle().seconds, tried.middle().values, end.seconds, end.values);
            now = accepted(end);
            step = Math.min(step * change(tried), longest - now.seconds);
        }
        return now.unrest(starters) < REST_SHARE ? outcome(now) : StartUp.Outcome.CUT_OFF;
    }

    private StartUp.Outcome outcome(Instant end) {
        for (int each = 0; each < starters; each++) {
            if (moving.get(each).isStalled(end.state[each])) {
                return StartUp.Outcome.STALLED;
            }
        }
        return StartUp.Outcome.SETTLED;
    }

    /** A step with its errors over the allowed ones, reduced to what the step length is to be divided by. */
    private record Tried(Instant middle, Instant end, double ratio) {}

    private static double change(Tried tried) {
        return Math.max(MOST_CUT, Math.min(MOST_GROWTH, SAFETY / Math.max(tried.ratio(), SAFETY / MOST_GROWTH)));
    }

    private Tried tried(Instant now, double step) {
        double[] second = new double[0];
        double[] third = second;
        double[] state = now.state;
        if (states) {
            second = at(now.seconds + step / 2, moved(state, step, 0.5, now.rates)).rates;
            third = at(now.seconds + step * 0.75, moved(state, step, 0.75, second)).rates;
            state = state.clone();
            for (int each = 0; each < state.length; each++) {
                state[each] += step * (2 * now.rates[each] + 3 * second[each] + 4 * third[each]) / 9;
            }
        }
        Instant end = at(now.seconds + step, state);
        double error = states ? stateError(now.rates, second, third, end.rates, step) : 0;
        Instant middle = at(now.seconds + step / 2, middle(now, end, step));
        return new Tried(middle, end, Math.max(Math.cbrt(error), Math.sqrt(lineError(now, middle, end))));
    }

    /** Largest difference of the two orders over the allowed one. */
    private double stateError(double[] first, double[] second, double[] third, double[] fourth, double step) {
        double worst = 0;
        for (int each = 0; each < first.length; each++) {
            double difference =
                    step * (-5.0 / 72 * first[each] + second[each] / 12 + third[each] / 9 - fourth[each] / 8);
            double allowed = STATE_ERROR_SHARE * moving.get(each).stateSize(network);
            worst = Math.max(worst, Math.abs(difference) / allowed);
        }
        return worst;
    }

    private static double[] moved(double[] state, double step, double share, double[] rates) {
        double[] moved = state.clone();
        for (int each = 0; each < moved.length; each++) {
            moved[each] += share * step * rates[each];
        }
        return moved;
    }

    /** State in the middle of a step by the cubic through both ends. */
    private static double[] middle(Instant start, Instant end, double step) {
        double[] middle = new double[start.state.length];
        for (int each = 0; each < middle.length; each++) {
            middle[each] = (start.state[each] + end.state[each]) / 2 + step / 8 * (start.rates[each] - end.rates[each]);
        }
        return middle;
    }

    private double lineError(Instant start, Instant middle, Instant end) {
        double worst = 0;
        for (int each = 0; each < sizes.length; each++) {
            double line = (start.values[each] + end.values[each]) / 2;
            worst = Math.max(worst, Math.abs(middle.values[each] - line) / (LINE_ERROR_SHARE * sizes[each]));
        }
        return worst;
    }

    private Instant accepted(Instant next) {
        double[] rates = next.rates.clone();
        for (int each = 0; each < rates.length; each++) {
            moving.get(each).reached(next.unrests[each]);
            if (moving.get(each).isFrozen()) {
                rates[each] = 0;
            }
        }
        return new Instant(next.seconds, next.state, rates, next.values, next.unrests);
    }

    /** Solves one instant. */
    private Instant at(double seconds, double[] state) {
        for (int each = 0; each < state.length; each++) {
            moving.get(each).apply(network, seconds, state[each]);
        }
        Optional<Text> failure = limits.solve(network);
        if (failure.isPresent()) {
            throw new Collapse(failure.get());
        }
        double[] rates = new double[state.length];
        double[] unrests = new double[state.length];
        for (int each = 0; each < state.length; each++) {
            rates[each] = moving.get(each).rate(network, state[each]);
            unrests[each] = moving.get(each).unrest(network, seconds, state[each]);
        }
        return new Instant(seconds, state, rates, reading.get(), unrests);
    }
}
