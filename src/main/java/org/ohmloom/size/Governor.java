package org.ohmloom.size;

/** What can decide the size of a conductor. */
public enum Governor {
    /** The current it may carry where it lies. */
    AMPACITY("ampacity"),
    /** The voltage its load may lose. */
    VOLTAGE_DROP("voltage drop"),
    /** The protective device upstream. */
    PROTECTION("protection"),
    /** The smallest size that survives handling. */
    MECHANICAL("mechanical minimum");

    private final String words;

    Governor(String words) {
        this.words = words;
    }

    /** How people call it. */
    public String words() {
        return words;
    }
}
