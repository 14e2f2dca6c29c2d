package org.ohmloom.solve;

/**
 * The current of an inductance through one period, once every period is like the last.
 *
 * <p>In a stretch the terminals show driveVolts - sourceOhms x i, so L di/dt = (driveVolts - emf) - (R + sourceOhms) i and
 * i(t) = i1 + (i0 - i1) exp(-t / tau) with i1 = (driveVolts - emf) / (R + sourceOhms) and tau = L / (R + sourceOhms). The current
 * never turns: where it would, it stays at 0 (discontinuous current). Exact for any ratio of period to tau. For two
 * stretches, V and 0, it is equations 5.23 and 5.24 of Rashid, Power Electronics, 4th edition.
 */
final class Waveform {

    private static final int MOST_PERIODS = 200;
    private static final double SAME_RATIO = 1e-14;

    private final double[] meanAmps;
    private final double[] squareAmps2;
    private final double[] endAmps;
    private final boolean[] interrupted;
    private double valleyAmps = Double.POSITIVE_INFINITY;
    private double peakAmps;

    private Waveform(int stretches) {
        meanAmps = new double[stretches];
        squareAmps2 = new double[stretches];
        endAmps = new double[stretches];
        interrupted = new boolean[stretches];
    }

    /**
     * The winding and what drives it.
     *
     * @param seconds    length of each stretch, s
     * @param driveVolts voltage at the terminals in each stretch without current, V
     * @param sourceOhms fall of that voltage with the current in each stretch, ohm
     * @param ohms       resistance of the winding, ohm
     * @param henries    inductance, H
     */
    record Winding(double[] seconds, double[] driveVolts, double[] sourceOhms, double ohms, double henries) {}

    /** The lasting waveform with a counter-voltage, V. */
    static Waveform of(Winding winding, double emfVolts) {
        int stretches = winding.seconds().length;
        Waveform wave = new Waveform(stretches);
        double start = Math.max(0, wave.lastingStart(winding, emfVolts));
        for (int period = 0; period < MOST_PERIODS; period++) {
            double end = wave.run(winding, emfVolts, start);
            if (Math.abs(end - start) <= SAME_RATIO * Math.max(1, Math.abs(end))) {
                return wave;
            }
            start = end;
        }
        return wave;
    }

    /** The current a period starts and ends with while it never reaches 0. */
    private double lastingStart(Winding winding, double emfVolts) {
        double end = 0;
        double constants = 0;
        for (int stretch = 0; stretch < meanAmps.length; stretch++) {
            double ohms = winding.ohms() + winding.sourceOhms()[stretch];
            double through = winding.seconds()[stretch] * ohms / winding.henries();
            double settled = (winding.driveVolts()[stretch] - emfVolts) / ohms;
            end = end * Math.exp(-through) - settled * Math.expm1(-through);
            constants += through;
        }
        return end / -Math.expm1(-constants);
    }

    /** Goes through one period; gives the current at its end. */
    private double run(Winding winding, double emfVolts, double startAmps) {
        double amps = startAmps;
        valleyAmps = startAmps;
        peakAmps = startAmps;
        for (int stretch = 0; stretch < meanAmps.length; stretch++) {
            double ohms = winding.ohms() + winding.sourceOhms()[stretch];
            double tau = winding.henries() / ohms;
            double seconds = winding.seconds()[stretch];
            double settled = (winding.driveVolts()[stretch] - emfVolts) / ohms;
            double away = amps - settled;
            double lasting = seconds;
            if (settled < 0) {
                lasting = Math.min(seconds, tau * Math.log(away / -settled));
            }
            interrupted[stretch] = lasting < seconds;
            double decay = -Math.expm1(-lasting / tau);
            double decay2 = -Math.expm1(-2 * lasting / tau);
            meanAmps[stretch] = (settled * lasting + away * tau * decay) / seconds;
            squareAmps2[stretch] =
                    (settled * settled * lasting + 2 * settled * away * tau * decay + away * away * tau / 2 * decay2)
                            / seconds;
            amps = interrupted[stretch] ? 0 : Math.max(0, settled + away * (1 - decay));
            endAmps[stretch] = amps;
            valleyAmps = Math.min(valleyAmps, amps);
            peakAmps = Math.max(peakAmps, amps);
        }
        return amps;
    }

    /** Mean of a stretch, A. */
    double meanAmps(int stretch) {
        return meanAmps[stretch];
    }

    /** Mean square of a stretch, A2. */
    double squareAmps2(int stretch) {
        return Math.max(squareAmps2[stretch], meanAmps[stretch] * meanAmps[stretch]);
    }

    /** Whether the current dies before the end of a stretch. */
    boolean isInterrupted(int stretch) {
        return interrupted[stretch];
    }

    /** Whether the current is higher at the end of a stretch than at its start. */
    boolean isRising(int stretch) {
        return endAmps[stretch] > startAmps(stretch);
    }

    /** Current at the start of a stretch, A. */
    double startAmps(int stretch) {
        return endAmps[(stretch + endAmps.length - 1) % endAmps.length];
    }

    /** Current at the end of a stretch, A. */
    double endAmps(int stretch) {
        return endAmps[stretch];
    }

    /** Least current, A. */
    double valleyAmps() {
        return valleyAmps;
    }

    /** Largest current, A. */
    double peakAmps() {
        return peakAmps;
    }

    /** Mean over the period, A. */
    double meanAmps(double[] shares) {
        double mean = 0;
        for (int stretch = 0; stretch < shares.length; stretch++) {
            mean += shares[stretch] * meanAmps[stretch];
        }
        return mean;
    }
}
