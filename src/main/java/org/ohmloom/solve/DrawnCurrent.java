package org.ohmloom.solve;

/**
 * A load that takes its current from any voltage above a small knee, and none from a voltage the wrong way round.
 *
 * <p>amps = ratedAmps for volts &gt;= {@link #KNEE_VOLTS}, ratedAmps x volts / KNEE_VOLTS below, 0 for volts &lt;= 0. Above the
 * knee the current is exact. A feed too thin for the current ends on the knee: the load then takes what the feed can
 * bring and has almost no voltage left.
 *
 * @param ratedAmps the current, A, 0 or more
 */
record DrawnCurrent(double ratedAmps) implements Characteristic {

    /** Voltage from which the whole current flows, V. A choice of this program. */
    static final double KNEE_VOLTS = 0.01;

    @Override
    public Precise amps(Precise volts) {
        if (volts.value() >= KNEE_VOLTS) {
            return Precise.of(ratedAmps);
        }
        return volts.value() <= 0 ? Precise.ZERO : volts.times(ratedAmps / KNEE_VOLTS);
    }

    @Override
    public double siemens(Precise volts) {
        return volts.value() > 0 && volts.value() < KNEE_VOLTS ? ratedAmps / KNEE_VOLTS : 0;
    }
}
