package org.ohmloom.solve;

import java.util.List;
import org.ohmloom.graph.Law;

/**
 * What the moments of one island add up to: means, mean squares, largest currents and mean power of its branches, mean
 * voltages of its points.
 *
 * <p>Voltages and mean currents are added in {@link Precise} numbers, so that they satisfy Ohm's and Kirchhoff's laws as well as
 * those of each moment do.
 */
final class Tally {

    /** More by less than this share is the same: ties go to the earlier moment, not to rounding. */
    private static final double MORE_RATIO = 1 + 1e-12;

    private final Circuit circuit;
    private final int count;
    private final boolean[] keepsCurrent;
    private final double[] presentAmps;
    private final double[] presentVolts;
    private final PreciseRow meanVolts;
    private final PreciseRow meanAmps;
    private final double[] squares;
    private final double[] mostAmps;
    private final double[] mostVolts;
    private final double[] watts;
    private final double[][][] clockSquares;
    private final double[][] clockWeights;
    private final double[][] replicateSquares;

    /** Starts with nothing for a circuit, its clocks and the plan of its moments. */
    Tally(Circuit circuit, List<Clock> clocks, MomentPlan plan) {
        this.circuit = circuit;
        count = plan.count();
        int branches = circuit.branches().size();
        meanVolts = circuit.flat();
        meanAmps = new PreciseRow(branches);
        keepsCurrent = new boolean[branches];
        for (int branch = 0; branch < branches; branch++) {
            Law law = circuit.branches().get(branch).law();
            keepsCurrent[branch] = law instanceof Law.Inductive || law instanceof Law.MagnetMotor;
        }
        presentAmps = new double[branches];
        presentVolts = new double[branches];
        squares = new double[branches];
        mostAmps = new double[branches];
        mostVolts = new double[branches];
        watts = new double[branches];
        clockSquares = new double[clocks.size()][][];
        clockWeights = new double[clocks.size()][];
        for (int clock = 0; clock < clockSquares.length; clock++) {
            int stretches = clocks.get(clock).stretches().size();
            clockSquares[clock] = new double[stretches][branches];
            clockWeights[clock] = new double[stretches];
        }
        replicateSquares = new double[plan.isSampled() ? MomentPlan.REPLICATES : 0][branches];
    }

    /**
     * Adds a moment.
     *
     * @param at        the part each clock is in
     * @param share     share of time it stands for; 0 for one that only may be the worst
     * @param replicate the independent sample it belongs to
     * @param moment    its voltages and currents
     */
    void add(List<Part> at, double share, int replicate, IslandMoment moment) {
        for (int point = 0; point < meanVolts.length(); point++) {
            mean(meanVolts, moment.volts(), point, share);
        }
        for (int clock = 0; clock < clockWeights.length; clock++) {
            clockWeights[clock][at.get(clock).stretch()] += share;
        }
        PreciseRow volts = circuit.along(moment.volts());
        for (int branch = 0; branch < squares.length; branch++) {
            double amps = moment.amps().value(branch);
            double along = volts.value(branch);
            presentAmps[branch] = amps;
            presentVolts[branch] = along;
            mean(meanAmps, moment.amps(), branch, share);
            squares[branch] += share * amps * amps;
            watts[branch] += share * along * amps;
            boolean more = Math.abs(amps) > Math.abs(mostAmps[branch]) * MORE_RATIO || mostAmps[branch] == 0;
            if (more) {
                mostAmps[branch] = amps;
            }
            if (keepsCurrent[branch] ? along * amps > 0 && Math.abs(along) > Math.abs(mostVolts[branch]) : more) {
                mostVolts[branch] = along;
            }
            for (int clock = 0; clock < clockSquares.length; clock++) {
                clockSquares[clock][at.get(clock).stretch()][branch] += share * amps * amps;
            }
            if (replicateSquares.length > 0 && share > 0) {
                replicateSquares[replicate][branch] += share * MomentPlan.REPLICATES * amps * amps;
            }
        }
    }

    private void mean(PreciseRow mean, PreciseRow moment, int at, double share) {
        if (count == 1) {
            mean.set(at, moment, at);
        } else {
            mean.addProduct(at, moment, at, share);
        }
    }

    /**
     * Adds the ripple round a moment: it changes no mean, adds its own square to every mean square, and its own power, and lifts
     * the largest currents.
     *
     * @param at        the part each clock is in
     * @param share     share of time the moment stands for
     * @param replicate the independent sample it belongs to
     * @param ripple    the ripple of all clocks
     */
    void addRipple(List<Part> at, double share, int replicate, List<RippleFlow> ripple) {
        for (int branch = 0; branch < squares.length; branch++) {
            double square = 0;
            double power = 0;
            double lift = 0;
            double liftVolts = 0;
            for (RippleFlow each : ripple) {
                double amps = each.amps()[branch];
                square += amps * amps;
                power += amps * each.volts()[branch];
                lift += each.peakRatio() * Math.abs(amps);
                liftVolts += each.peakRatio() * (amps < 0 ? -each.volts()[branch] : each.volts()[branch]);
            }
            squares[branch] += share * square;
            watts[branch] += share * power;
            for (int clock = 0; clock < clockSquares.length; clock++) {
                clockSquares[clock][at.get(clock).stretch()][branch] += share * square;
            }
            if (replicateSquares.length > 0) {
                replicateSquares[replicate][branch] += share * MomentPlan.REPLICATES * square;
            }
            double turns = presentAmps[branch] < 0 ? -1 : 1;
            double most = presentAmps[branch] + turns * lift;
            if (Math.abs(most) > Math.abs(mostAmps[branch])) {
                mostAmps[branch] = most;
                if (!keepsCurrent[branch]) {
                    mostVolts[branch] = presentVolts[branch] + turns * liftVolts;
                }
            }
        }
    }

    /** The circuit it is about. */
    Circuit circuit() {
        return circuit;
    }

    /** Mean voltage of each point, V. */
    PreciseRow meanVolts() {
        return meanVolts;
    }

    /** Mean current of a branch, A. */
    Precise meanAmps(int branch) {
        return meanAmps.get(branch);
    }

    /** Whether the island has one moment only. */
    boolean isSteady() {
        return count == 1;
    }

    /** Mean square current of a branch, A2. */
    double meanSquareAmps(int branch) {
        return squares[branch];
    }

    /** Mean square current of a branch in a stretch of a clock, A2. */
    double meanSquareAmps(int branch, int clock, int stretch) {
        double weight = clockWeights[clock][stretch];
        return weight > 0 ? clockSquares[clock][stretch][branch] / weight : squares[branch];
    }

    /** Largest current of a branch, with its sign, A. */
    double mostAmps(int branch) {
        return mostAmps[branch];
    }

    /** Voltage along a branch at its largest current, V; of an inductive load the largest that drives its current. */
    double mostVolts(int branch) {
        return mostVolts[branch];
    }

    /** Mean of voltage times current of a branch, W. */
    double watts(int branch) {
        return watts[branch];
    }

    /** Standard error of the RMS current of a branch for want of moments, A; 0 when all were taken. */
    double rmsErrorAmps(int branch) {
        if (replicateSquares.length == 0) {
            return 0;
        }
        double variance = 0;
        for (double[] replicate : replicateSquares) {
            double miss = replicate[branch] - squares[branch];
            variance += miss * miss;
        }
        double count = replicateSquares.length;
        double squareError = Math.sqrt(variance / (count - 1) / count);
        return squareError > 0 ? squareError / (2 * Math.sqrt(squares[branch])) : 0;
    }
}
