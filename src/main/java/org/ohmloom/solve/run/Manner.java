package org.ohmloom.solve.run;

/** How a start goes. */
public enum Manner {
    /** A motor gains speed by the torque its current leaves over. */
    RUNS_UP,
    /** A peak decays exponentially to the running current. */
    DECAYS,
    /** A capacitor fills. */
    CHARGES
}
