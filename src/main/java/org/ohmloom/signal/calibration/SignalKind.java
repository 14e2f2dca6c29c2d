package org.ohmloom.signal.calibration;

import org.ohmloom.units.Dimension;
import org.ohmloom.words.Constants;

/** What a sensor gives. */
public enum SignalKind {
    /** A voltage over its return. */
    VOLTAGE(Dimension.VOLTAGE),
    /** A share of its supply, told as the voltage at the nominal supply. */
    SHARE_OF_SUPPLY(Dimension.VOLTAGE),
    /** A resistance between signal and return. */
    RESISTANCE(Dimension.RESISTANCE),
    /** A current out of the signal. */
    CURRENT(Dimension.CURRENT),
    /** Pulses in a second. */
    FREQUENCY(Dimension.FREQUENCY);

    private final Dimension dimension;

    SignalKind(Dimension dimension) {
        this.dimension = dimension;
    }

    /** What people call it. */
    public String words() {
        return Constants.text(this).english();
    }

    /** Its dimension; numbers of it are in the canonical unit. */
    public Dimension dimension() {
        return dimension;
    }
}
