package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * Currents and sense voltages of slow sources as straight functions of their electromotive forces, learnt from solutions.
 * A source nobody moved yet is taken to keep its electromotive force.
 */
final class StraightModel {

    private static final int MOST_SWEEPS = 100;
    private static final int HALVINGS = 60;
    private static final double REACH_RATIO = 0.6;
    private static final double STILL_RATIO = 1e-14;

    /** Slope of current and sense voltage of each source (first two indices) with each electromotive force. */
    private final double[][][] slopes;

    private final boolean[] known;

    StraightModel(int sources) {
        slopes = new double[sources][2][sources];
        known = new boolean[sources];
    }

    /** Whether the source has been moved. */
    boolean knows(int source) {
        return known[source];
    }

    /** Learns from two solutions: mends the slopes along the step between them, as little as that takes. */
    void learn(double[] from, double[][] before, double[] to, double[][] after) {
        double square = 0;
        for (int j = 0; j < from.length; j++) {
            double step = to[j] - from[j];
            square += step * step;
            known[j] |= step != 0;
        }
        if (square == 0) {
            return;
        }
        for (int k = 0; k < from.length; k++) {
            for (int of = 0; of < 2; of++) {
                double predicted = 0;
                for (int j = 0; j < from.length; j++) {
                    predicted += slopes[k][of][j] * (to[j] - from[j]);
                }
                double missing = after[k][of] - before[k][of] - predicted;
                for (int j = 0; j < from.length; j++) {
                    slopes[k][of][j] += missing * (to[j] - from[j]) / square;
                }
            }
        }
    }

    /** What the model sees at other electromotive forces than those of a solution. */
    double[][] at(double[] emfVolts, double[] from, double[][] seen) {
        double[][] there = new double[seen.length][2];
        for (int k = 0; k < seen.length; k++) {
            for (int of = 0; of < 2; of++) {
                there[k][of] = seen[k][of];
                for (int j = 0; j < from.length; j++) {
                    there[k][of] += slopes[k][of][j] * (emfVolts[j] - from[j]);
                }
            }
        }
        return there;
    }

    /**
     * The electromotive forces at which the model has all laws hold. Batteries ask for a current and alternators for a
     * voltage, so for each trial of an alternator the batteries are settled first; each is found by halving, one after the
     * other until none moves any more.
     */
    double[] solve(double[] from, double[][] seen, List<MeanLaw> laws) {
        double[] emf = from.clone();
        List<Integer> batteries = new ArrayList<>();
        List<Integer> alternators = new ArrayList<>();
        for (int k = 0; k < emf.length; k++) {
            if (known[k]) {
                (laws.get(k) instanceof MeanLaw.Regulated ? alternators : batteries).add(k);
            }
        }
        Trial trial = new Trial(emf, from, seen, laws, batteries);
        sweep(alternators, trial, true);
        sweep(batteries, trial, false);
        return emf;
    }

    /** Electromotive forces while they are sought. */
    private record Trial(
            double[] emfVolts, double[] fromVolts, double[][] seen, List<MeanLaw> laws, List<Integer> batteries) {}

    private void sweep(List<Integer> sources, Trial trial, boolean settleBatteries) {
        for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
            double moved = 0;
            for (int k : sources) {
                double before = trial.emfVolts[k];
                halve(k, trial, settleBatteries);
                moved = Math.max(moved, Math.abs(trial.emfVolts[k] - before) / Math.abs(before));
            }
            if (moved <= STILL_RATIO || sources.size() == 1) {
                return;
            }
        }
    }

    private void halve(int k, Trial trial, boolean settleBatteries) {
        double low = trial.fromVolts[k] * (1 - REACH_RATIO);
        double high = trial.fromVolts[k] * (1 + REACH_RATIO);
        for (int step = 0; step < HALVINGS; step++) {
            trial.emfVolts[k] = (low + high) / 2;
            if (settleBatteries) {
                sweep(trial.batteries, trial, false);
            }
            double[][] there = at(trial.emfVolts, trial.fromVolts, trial.seen);
            if (trial.laws.get(k).missVolts(trial.emfVolts[k], there[k][0], there[k][1]) > 0) {
                high = trial.emfVolts[k];
            } else {
                low = trial.emfVolts[k];
            }
        }
        trial.emfVolts[k] = (low + high) / 2;
    }
}
