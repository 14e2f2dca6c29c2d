package org.ohmloom.solve;

/**
 * The current an inductance keeps through one moment, whatever the voltage. Where nothing lets it flow on, it drives the
 * voltage the other way until something breaks through: that is taken as {@link #BREAK_VOLTS}, far above any supply, so that
 * the current ends at once.
 *
 * @param keptAmps the current, A, more than 0
 */
record KeptCurrent(double keptAmps) implements Characteristic {

    /** Voltage at which a current without a way breaks through, V. A choice of this program. */
    static final double BREAK_VOLTS = 1000;

    private static final double BREAK_OHMS = 1;

    @Override
    public Precise amps(Precise volts) {
        double beyond = volts.value() + BREAK_VOLTS;
        return beyond >= 0
                ? Precise.of(keptAmps)
                : volts.plus(BREAK_VOLTS).dividedBy(BREAK_OHMS).plus(keptAmps);
    }

    @Override
    public double siemens(Precise volts) {
        return volts.value() + BREAK_VOLTS >= 0 ? 0 : 1 / BREAK_OHMS;
    }
}
