package org.ohmloom.draw.wiring;

/**
 * The stretch of a line between two columns next to each other.
 *
 * @param link  the line
 * @param from  where it comes from
 * @param out   where it leaves that
 * @param to    where it goes to
 * @param in    where it arrives
 * @param first whether it begins here
 */
record Hop(Link link, Stand from, Port out, Stand to, Port in, boolean first) {

    double fromMm() {
        return from.yMm(out);
    }

    double toMm() {
        return to.yMm(in);
    }

    boolean isLevel() {
        return Math.abs(fromMm() - toMm()) < 0.01;
    }

    /** How much it should run level: lines that pass columns more than others. */
    double weight() {
        boolean passes = from.symbol().isEmpty();
        boolean goesOn = to.symbol().isEmpty();
        return passes && goesOn ? 8 : passes || goesOn ? 2 : 1;
    }
}
