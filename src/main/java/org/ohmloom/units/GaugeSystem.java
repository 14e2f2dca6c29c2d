package org.ohmloom.units;

/** How the size of a conductor is labelled. */
public enum GaugeSystem {
    /** American wire gauge, whole numbers; 1/0 is 0, 2/0 is -1, 3/0 is -2, 4/0 is -3. */
    AWG,
    /** Nominal copper cross-section in mm2. */
    METRIC
}
