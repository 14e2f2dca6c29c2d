package org.ohmloom.draw.wiring;

/** Where a line meets a symbol. */
final class Port {

    private final String terminal;
    private final String label;
    private final boolean plugged;
    private double offsetMm;
    private double share;

    Port(String terminal, String label, boolean plugged) {
        this.terminal = terminal;
        this.label = label;
        this.plugged = plugged;
    }

    String terminal() {
        return terminal;
    }

    String label() {
        return label;
    }

    /** Whether it is a contact of a connector. */
    boolean plugged() {
        return plugged;
    }

    /** Below the upper side of its symbol, mm. */
    double offsetMm() {
        return offsetMm;
    }

    void place(double mm) {
        offsetMm = mm;
    }

    /** Where what it is joined to stands in its column, from 0 at the top to 1. */
    double share() {
        return share;
    }

    void wish(double value) {
        share = value;
    }
}
