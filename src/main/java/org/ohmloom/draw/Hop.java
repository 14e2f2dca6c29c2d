package org.ohmloom.draw;

/**
 * A wire between neighbouring columns, or back to the column it comes from.
 *
 * @param link   the wire
 * @param from   where it leaves on the right side
 * @param to     where it arrives
 * @param back   whether it arrives on the right side of the same column
 * @param column the column it leaves from
 * @param first  whether the wire begins here, and so has its label here
 */
record Hop(CircuitGraph.Link link, Stance from, Stance to, boolean back, int column, boolean first) {

    /** How much it matters that it runs level: most where it only passes. */
    double weight() {
        return from.card().isEmpty() && to.card().isEmpty()
                ? 8
                : from.card().isEmpty() || to.card().isEmpty() ? 2 : 1;
    }

    double fromMm() {
        return from.yMm(link.wire().id(), false, false);
    }

    double toMm() {
        return to.yMm(link.wire().id(), from == to, !back);
    }
}
