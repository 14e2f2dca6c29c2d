package org.ohmloom.signal.calibration;

import org.ohmloom.units.Dimension;

/** What a sensor gives. */
public enum SignalKind {
    /** A voltage over its return. */
    VOLTAGE("voltage", Dimension.VOLTAGE),
    /** A share of its supply, told as the voltage at the nominal supply. */
    SHARE_OF_SUPPLY("voltage at nominal supply", Dimension.VOLTAGE),
    /** A resistance between signal and return. */
    RESISTANCE("resistance", Dimension.RESISTANCE),
    /** A current out of the signal. */
    CURRENT("current", Dimension.CURRENT),
    /** Pulses in a second. */
    FREQUENCY("frequency", Dimension.FREQUENCY);

    private final String words;
    private final Dimension dimension;

    SignalKind(String words, Dimension dimension) {
        this.words = words;
        this.dimension = dimension;
    }

    /** What people call it. */
    public String words() {
        return words;
    }

    /** Its dimension; numbers of it are in the canonical unit. */
    public Dimension dimension() {
        return dimension;
    }
}
