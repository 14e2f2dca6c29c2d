package org.ohmloom.size;

/** What can decide the size of a conductor. */
public enum Governor {
    /** The current it may carry where it lies. */
    AMPACITY("ampacity"),
    /** The voltage its load may lose. */
    VOLTAGE_DROP("voltage drop"),
    /** The protective device upstream. */
    PROTECTION("protection"),
    /** What the protective device lets through in a short circuit until it opens. */
    OPENING_TIME("short circuit"),
    /** What the protective device carries for ever, or for long before it opens. */
    SLOW_OVERLOAD("slow overload"),
    /** The smallest size that survives handling. */
    MECHANICAL("mechanical minimum"),
    /** The contacts at its ends. */
    CRIMP("contact crimp range"),
    /** The other wires of its circuit, where all get one size. */
    CIRCUIT("one size per circuit"),
    /** The voltage a load may lose, spent by several wires whose sizes are chosen together. */
    JOINT_DROP("joint drop budget");

    private final String words;

    Governor(String words) {
        this.words = words;
    }

    /** How people call it. */
    public String words() {
        return words;
    }
}
