package org.ohmloom.solve;

/**
 * A load that holds its power: amps = watts / volts.
 *
 * <p>The current falls as the voltage rises. Behind a source of Vs and R there are two voltages that satisfy it, V = (Vs ±
 * sqrt(Vs^2 - 4 R watts)) / 2; only the upper one is stable, and above watts = Vs^2 / (4 R) there is none. The search
 * comes from above and must not pass through to low voltages: below {@code floorVolts} the current stays at that of
 * the floor, and a search that ends there has found no operating point.
 *
 * @param watts      the power, W, more than 0
 * @param floorVolts voltage no operating point lies below, V, more than 0
 */
record DrawnPower(double watts, double floorVolts) implements Characteristic {

    /**
     * Open voltage below which such a load sleeps and draws nothing, V. A choice of this program: what holds its power
     * is electronics, and none of it works from less.
     */
    static final double WAKE_VOLTS = 1;

    private static final double FLOOR_RATIO = 0.1;

    /** A load that has not yet found its floor. */
    static DrawnPower of(double watts) {
        return new DrawnPower(watts, WAKE_VOLTS * FLOOR_RATIO);
    }

    /** This load with its floor at a tenth of the voltage it has when it draws nothing; see {@link PowerLimit}. */
    DrawnPower below(double openVolts) {
        return new DrawnPower(watts, openVolts * FLOOR_RATIO);
    }

    /** A share of this load. */
    DrawnPower share(double shareFraction) {
        return new DrawnPower(watts * shareFraction, floorVolts);
    }

    @Override
    public Precise amps(Precise volts) {
        return Precise.of(watts / Math.max(volts.value(), floorVolts));
    }

    @Override
    public double siemens(Precise volts) {
        double at = volts.value();
        return at > floorVolts ? -watts / (at * at) : 0;
    }
}
