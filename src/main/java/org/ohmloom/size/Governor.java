package org.ohmloom.size;

import org.ohmloom.words.Constants;

/** What can decide the size of a conductor. */
public enum Governor {
    /** The current it may carry where it lies. */
    AMPACITY,
    /** The voltage its load may lose. */
    VOLTAGE_DROP,
    /** The protective device upstream. */
    PROTECTION,
    /** What the protective device lets through in a short circuit until it opens. */
    OPENING_TIME,
    /** What the protective device carries for ever, or for long before it opens. */
    SLOW_OVERLOAD,
    /** The smallest size that survives handling. */
    MECHANICAL,
    /** The contacts at its ends. */
    CRIMP,
    /** The other wires of its circuit, where all get one size. */
    CIRCUIT,
    /** The voltage a load may lose, spent by several wires whose sizes are chosen together. */
    JOINT_DROP;

    /** How people call it, in English. */
    public String words() {
        return Constants.text(this).english();
    }
}
