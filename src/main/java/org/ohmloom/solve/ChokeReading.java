package org.ohmloom.solve;

import java.util.List;

/** What one pass over all moments shows of an inductive load: its voltages at its levels. */
final class ChokeReading {

    /** Below this voltage the current has broken through: nothing let it flow on. */
    private static final double BROKEN_VOLTS = -0.9 * KeptCurrent.BREAK_VOLTS;

    private static final double NO_AMPS = 1e-9;
    private static final double MOST_OHMS_RATIO = 100;

    private final Choke choke;
    private final ClockReading all;
    private final double[][] weight;
    private final double[][] volts;
    private final double[][] amps;
    private final double[] rippleAmps;
    private final double[] rippleVolts;
    private boolean broken;

    ChokeReading(Choke choke, List<Clock> clocks) {
        this.choke = choke;
        all = new ClockReading(clocks);
        weight = new double[choke.stretches()][2];
        volts = new double[choke.stretches()][2];
        amps = new double[choke.stretches()][2];
        rippleAmps = new double[choke.stretches()];
        rippleVolts = new double[choke.stretches()];
    }

    /**
     * Takes down a moment.
     *
     * @param at    the part each clock is in
     * @param share share of time
     * @param along V(from) - V(to) of its branch, V
     * @param flow  current of its branch, A
     */
    void add(List<Part> at, double share, double along, double flow) {
        double ownVolts = choke.direction() * along;
        boolean breaks = ownVolts <= BROKEN_VOLTS;
        broken |= breaks;
        // what breaks through flows in the load alone, the network does not see it
        double ownAmps = breaks ? choke.levelAmps(at) : choke.direction() * flow;
        boolean idle = ownAmps <= NO_AMPS;
        // without current the terminals show the counter-voltage, whatever floats there
        double shown = idle ? choke.emfVolts() : ownVolts;
        all.add(at, share, shown);
        int stretch = choke.own() < 0 ? 0 : at.get(choke.own()).stretch();
        int piece = choke.own() < 0 || at.get(choke.own()).placeFraction() < choke.cut(stretch) ? 0 : 1;
        weight[stretch][piece] += share;
        volts[stretch][piece] += share * (idle ? Math.min(ownVolts, choke.emfVolts()) : ownVolts);
        amps[stretch][piece] += share * ownAmps;
    }

    /** Whether its current found no way in some moment. */
    boolean isBroken() {
        return broken;
    }

    /** By how much the voltage in the stretches of another clock differs from the mean, V. */
    double[] deviations(int clock) {
        return all.deviations(clock);
    }

    /**
     * Takes down what its ripple does to its voltage in a moment.
     *
     * @param at     the part each clock is in
     * @param share  share of time
     * @param change change of V(from) - V(to) with the ripple, V
     */
    void addRipple(List<Part> at, double share, double change) {
        if (choke.own() >= 0) {
            int stretch = at.get(choke.own()).stretch();
            rippleAmps[stretch] += share * choke.rippleAmps(at);
            rippleVolts[stretch] += share * change;
        }
    }

    /** Fall of the voltage with the current in a stretch, ohm. */
    double sourceOhms(int stretch) {
        double ohms = rippleAmps[stretch] == 0 ? 0 : -rippleVolts[stretch] / rippleAmps[stretch];
        return Math.max(0, Math.min(ohms, MOST_OHMS_RATIO * choke.ohms()));
    }

    /** Voltage in a stretch without its current, V. */
    double driveVolts(int stretch, double sourceOhms, double before) {
        double flowing = 0;
        double sumVolts = 0;
        double sumAmps = 0;
        for (int piece = 0; piece < 2; piece++) {
            if (weight[stretch][piece] > 0 && amps(stretch, piece) > NO_AMPS) {
                flowing += weight[stretch][piece];
                sumVolts += volts[stretch][piece];
                sumAmps += amps[stretch][piece];
            }
        }
        if (flowing > 0) {
            return (sumVolts + sourceOhms * sumAmps) / flowing;
        }
        double met = weight[stretch][0] + weight[stretch][1];
        return met > 0 ? (volts[stretch][0] + volts[stretch][1]) / met : before;
    }

    private double amps(int stretch, int piece) {
        return amps[stretch][piece] / weight[stretch][piece];
    }
}
