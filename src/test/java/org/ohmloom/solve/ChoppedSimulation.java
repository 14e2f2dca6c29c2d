package org.ohmloom.solve;

import java.util.Random;

/**
 * Runs a {@link ChoppedNetwork} through time in small steps, knowing nothing of moments, clocks or waveforms: in each step every
 * output is on or off, the inductances keep their currents, the voltage between feed and return follows from one equation, and
 * each inductance moves on by its own differential equation.
 */
final class ChoppedSimulation {

    private static final int STEPS_A_PERIOD = 250;
    private static final double PERIODS = 40;
    private static final double SETTLE_TIMES = 7;

    private final ChoppedNetwork network;
    private final double[] amps;
    private double seconds;

    /** Mean and mean square of the shared feed, and of each load, its own feed and its diode. */
    final double[] sums;

    private ChoppedSimulation(ChoppedNetwork network) {
        this.network = network;
        amps = new double[network.loads().size()];
        sums = new double[2 + 6 * amps.length];
    }

    /** Means and mean squares over a number of runs with clocks at random phases. */
    static double[] averages(ChoppedNetwork network, int runs, long seed) {
        Random random = new Random(seed);
        double[] averages = new double[2 + 6 * network.loads().size()];
        for (int run = 0; run < runs; run++) {
            ChoppedSimulation simulation = new ChoppedSimulation(network);
            simulation.run(random);
            for (int each = 0; each < averages.length; each++) {
                averages[each] += simulation.sums[each] / simulation.seconds / runs;
            }
        }
        return averages;
    }

    private void run(Random random) {
        double slowestSeconds = 0;
        double fastestSeconds = Double.POSITIVE_INFINITY;
        double longestTau = 0;
        double[] shift = new double[amps.length];
        for (int n = 0; n < amps.length; n++) {
            ChoppedNetwork.Chopped load = network.loads().get(n);
            slowestSeconds = Math.max(slowestSeconds, load.pulse().periodSeconds());
            fastestSeconds = Math.min(fastestSeconds, load.pulse().periodSeconds());
            longestTau = Math.max(longestTau, load.henries() / load.ohms());
            shift[n] = -1;
            for (int other = 0; other < n; other++) {
                if (network.loads()
                        .get(other)
                        .pulse()
                        .clock()
                        .equals(load.pulse().clock())) {
                    shift[n] = shift[other];
                }
            }
            shift[n] = shift[n] < 0 ? random.nextDouble() : shift[n];
            amps[n] = load.henries() > 0 ? load.pulse().dutyFraction() * network.emfVolts() / load.ohms() : 0;
        }
        double step = fastestSeconds / STEPS_A_PERIOD;
        double settled = SETTLE_TIMES * longestTau;
        double end = settled + (PERIODS + random.nextDouble()) * slowestSeconds;
        for (double time = 0; time < end; time += step) {
            step(time + step / 2, step, shift, time >= settled);
        }
    }

    private void step(double middle, double step, double[] shift, boolean counts) {
        boolean[] on = new boolean[amps.length];
        double known = 0;
        double siemens = 0;
        for (int n = 0; n < amps.length; n++) {
            ChoppedNetwork.Chopped load = network.loads().get(n);
            double at = middle * load.pulse().frequencyHertz() + shift[n];
            on[n] = load.pulse().isOnAt(at - Math.floor(at));
            if (on[n] && load.henries() > 0) {
                known += amps[n];
            } else if (on[n]) {
                siemens += 1 / (load.ohms() + load.feedOhms() + load.returnOhms());
            }
        }
        double shared = network.feedOhms() + network.returnOhms();
        double volts = (network.emfVolts() - shared * known) / (1 + shared * siemens);
        double feed = known + volts * siemens;
        if (counts) {
            seconds += step;
            add(0, feed, feed * feed, step);
        }
        for (int n = 0; n < amps.length; n++) {
            ChoppedNetwork.Chopped load = network.loads().get(n);
            double before = amps[n];
            amps[n] = load.henries() > 0
                    ? next(load, on[n], volts, before, step)
                    : on[n] ? volts / (load.ohms() + load.feedOhms() + load.returnOhms()) : 0;
            if (counts) {
                double start = load.henries() > 0 ? before : amps[n];
                double mean = (start + amps[n]) / 2;
                double square = (start * start + start * amps[n] + amps[n] * amps[n]) / 3;
                boolean ownFeed = on[n] || load.freewheel() == ChoppedNetwork.Freewheel.DRIVER_SUPPLY;
                add(2 + 6 * n, mean, square, step);
                add(4 + 6 * n, ownFeed ? mean : 0, ownFeed ? square : 0, step);
                add(6 + 6 * n, on[n] ? 0 : mean, on[n] ? 0 : square, step);
            }
        }
    }

    private void add(int place, double mean, double square, double step) {
        sums[place] += mean * step;
        sums[place + 1] += square * step;
    }

    /** L di/dt = drive - (R + path) i through one step, never below 0. */
    private static double next(ChoppedNetwork.Chopped load, boolean on, double volts, double amps, double step) {
        double path =
                switch (load.freewheel()) {
                    case AT_LOAD -> ChoppedNetwork.DIODE_OHMS;
                    case DRIVER_SUPPLY -> ChoppedNetwork.DIODE_OHMS
                            + load.feedOhms()
                            - ChoppedNetwork.OUTPUT_OHMS
                            + load.driverOhms();
                    case DRIVER_GROUND -> ChoppedNetwork.DIODE_OHMS + load.returnOhms() + load.driverOhms();
                    case NONE -> 0;
                };
        double ohms = load.ohms() + (on ? load.feedOhms() + load.returnOhms() : path);
        double settled = (on ? volts : -load.diodeVolts()) / ohms;
        return Math.max(0, settled + (amps - settled) * Math.exp(-step * ohms / load.henries()));
    }
}
