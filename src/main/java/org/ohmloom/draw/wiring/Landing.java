package org.ohmloom.draw.wiring;

/**
 * Where an end of a wire comes to stand on the diagram.
 *
 * @param symbol   key of its symbol
 * @param terminal the terminal of the symbol it meets; empty where there is only one place to meet
 * @param label    what is written there: {@code X1.3 +}, {@code 87}
 * @param plugged  whether it is a cavity of a connector, not a stud or screw
 */
record Landing(String symbol, String terminal, String label, boolean plugged) {

    /** Identity of the electrical place. */
    String place() {
        return place(symbol, terminal);
    }

    static String place(String symbol, String terminal) {
        return symbol + "\n" + terminal;
    }
}
